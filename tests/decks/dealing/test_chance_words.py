"""The sentence about chances: how often each team finishes first, and what is equal."""

from strategies import TEAMS, card

from decks.dealing import Deal, chance_sentence, deal_copies, deal_shares


def chances(*values):
    hands = tuple((card(n),) for n in range(len(values)))
    return chance_sentence(Deal(hands, (), values), TEAMS[: len(values)])


def test_every_team_is_told_how_often_it_finishes_first():
    assert chances(0.246, 0.254, 0.25, 0.25) == (
        "If every team is equally good, each finishes first about 25 times in 100."
    )
    assert chances(0.4, 0.6) == (
        "If every team is equally good, Heron finishes first about 40 times in 100, Otter 60; "
        "an equal chance is 50 in 100."
    )


def test_a_list_of_teams_ends_with_and():
    assert chances(0.2, 0.3, 0.5) == (
        "If every team is equally good, Heron finishes first about 20 times in 100, Otter 30 and "
        "Samphire 50; an equal chance is 33 in 100."
    )


def test_up_to_six_teams_are_named():
    assert chances(0.25, 0.15, 0.15, 0.15, 0.15, 0.15) == (
        "If every team is equally good, Heron finishes first about 25 times in 100, Otter 15, "
        "Samphire 15, Curlew 15, Limpet 15 and Dunlin 15; an equal chance is 17 in 100."
    )


def test_small_chances_are_told_to_a_tenth():
    assert chances(0.093, 0.907) == (
        "If every team is equally good, Heron finishes first about 9.3 times in 100, Otter 91; "
        "an equal chance is 50 in 100."
    )
    assert chances(*[0.1] * 10) == (
        "If every team is equally good, each finishes first about 10 times in 100."
    )


def test_many_teams_are_told_the_least_and_the_most():
    assert chances(*[0.08] * 6, *[0.09] * 5, 0.07) == (
        "If every team is equally good, each finishes first about 7.0 to 9.0 times in 100; "
        "an equal chance is 8.3 in 100."
    )
    # nine is less than ten, though as letters it comes after
    assert chances(*[0.09] * 3, *[0.18] * 3, 0.19) == (
        "If every team is equally good, each finishes first about 9.0 to 19 times in 100; "
        "an equal chance is 14 in 100."
    )


def test_without_a_race_nothing_is_said_of_chances():
    assert chance_sentence(deal_shares([], TEAMS[:3], "shore"), TEAMS[:3]) == ""
    assert chance_sentence(deal_shares([card(0)], TEAMS[:1], "shore"), TEAMS[:1]) == ""


def test_copies_give_every_team_the_same_chance():
    deal = deal_copies([card(0), card(1)], TEAMS[:4], "shore")
    assert deal.chances == (0.25,) * 4
