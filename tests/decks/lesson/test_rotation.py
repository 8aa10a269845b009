from hypothesis import given
from hypothesis import strategies as st

from decks.lesson.rotation import companies_of, followings, orders_for

BASES = st.integers(2, 12)
GROUPS = st.integers(1, 12)


@given(GROUPS, BASES)
def test_every_group_is_in_one_company_and_companies_differ_by_one_at_most(groups, bases):
    companies = companies_of(groups, bases)
    assert sorted(group for company in companies for group in company) == list(range(groups))
    sizes = [len(company) for company in companies]
    assert max(sizes) - min(sizes) <= 1
    assert len(companies) <= bases


@given(GROUPS, BASES, st.booleans())
def test_companies_never_meet_and_each_is_at_every_base_once(groups, bases, second):
    orders = orders_for(len(companies_of(groups, bases)), bases, second=second)
    for order in orders:
        assert sorted(order) == list(range(bases))
    for moment in zip(*orders, strict=True):
        assert len(set(moment)) == len(moment)


@given(GROUPS, BASES)
def test_with_fewer_groups_than_bases_no_step_is_taken_more_often_than_in_the_whole(groups, bases):
    """At most once where the number of bases is even, twice in both lessons where it is odd."""
    companies = len(companies_of(groups, bases))
    told = followings(orders_for(companies, bases))
    if bases % 2:
        told += followings(orders_for(companies, bases, second=True))
    assert max(told.values()) <= (2 if bases % 2 else 1)


def test_a_few_groups_at_thousands_of_bases_need_not_wait_for_all_orders_there_are():
    orders = orders_for(3, 20_000)
    assert [len(set(order)) for order in orders] == [20_000] * 3
