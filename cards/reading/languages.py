"""Names of languages: two of them above two columns are headings."""

from cards.reading.headings import key, keys_of

# Each language as English, Spanish, French, German, Portuguese and its own speakers name it.
_NAMES = (
    "English, inglés, anglais, Englisch, inglês",
    "Spanish, español, castellano, espagnol, Spanisch, espanhol",
    "French, francés, français, Französisch, francês",
    "German, alemán, allemand, Deutsch, alemão",
    "Portuguese, portugués, portugais, Portugiesisch, português",
    "Italian, italiano, italien, Italienisch",
    "Dutch, neerlandés, néerlandais, Niederländisch, neerlandês, Nederlands",
    "Latin, latín, Latein, latim",
    "Welsh, galés, gallois, Walisisch, galês, Cymraeg",
    "Irish, irlandés, irlandais, Irisch, irlandês, Gaeilge",
    "Polish, polaco, polonais, Polnisch, polonês, polski",
    "Russian, ruso, russe, Russisch, russo, русский",
    "Ukrainian, ucraniano, ukrainien, Ukrainisch, українська",
    "Turkish, turco, turc, Türkisch, Türkçe",
    "Greek, griego, grec, Griechisch, grego, ελληνικά",
    "Arabic, árabe, arabe, Arabisch, العربية",
    "Hebrew, hebreo, hébreu, Hebräisch, hebraico, עברית",
    "Chinese, Mandarin, chino, chinois, Chinesisch, chinês, 中文",
    "Japanese, japonés, japonais, Japanisch, japonês, 日本語",
    "Korean, coreano, coréen, Koreanisch, 한국어",
    "Hindi, हिन्दी",
    "Vietnamese, vietnamita, vietnamien, Vietnamesisch, tiếng Việt",
    "Swedish, sueco, suédois, Schwedisch, svenska",
    "Norwegian, noruego, norvégien, Norwegisch, norueguês, norsk",
    "Danish, danés, danois, Dänisch, dinamarquês, dansk",
)
_LANGUAGES = {
    form: number for number, names in enumerate(_NAMES) for form in keys_of(names) if form
}


def language_of(text: str) -> int | None:
    """Return a number that stands for the language which a text names, or None if it names none."""
    return _LANGUAGES.get(key(text))
