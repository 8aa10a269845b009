"""Text read back from the pages by two readers that share no code: pdfplumber and PDFium."""

import pdfplumber
import pypdfium2
import pytest
from support.shore import ITEMS


def by_pdfplumber(path):
    with pdfplumber.open(path) as pdf:
        return ["".join(char["text"] for char in page.chars) for page in pdf.pages]


def by_pdfium(path):
    document = pypdfium2.PdfDocument(path)
    texts = [page.get_textpage().get_text_bounded() for page in document]
    document.close()
    return texts


@pytest.mark.parametrize("read", [by_pdfplumber, by_pdfium])
def test_every_prompt_is_on_a_front_and_every_answer_on_a_back(build, read):
    pages = ["".join(text.split()) for text in read(build() / "cards.pdf")]
    fronts, backs = "".join(pages[::2]), "".join(pages[1::2])
    for prompt, answer, topic, _level in ITEMS:
        assert "".join(prompt.split()) in fronts
        assert "".join(answer.split()) in backs
        assert topic in fronts


def test_both_readers_find_the_same_letters(build):
    path = build() / "cards.pdf"
    for one, other in zip(by_pdfplumber(path), by_pdfium(path), strict=True):
        assert sorted("".join(one.split())) == sorted("".join(other.split()))
