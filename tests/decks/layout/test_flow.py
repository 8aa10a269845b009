"""Blocks down a page that is 100 points high, from 100 to 0."""

from decks.layout.flow import Block, flow, kept_at_the_ends
from decks.layout.frame import Frame


def block(height, **how):
    return Block(Frame(50, height, ()), **how)


def tops(pages):
    return [[placed.y + placed.frame.height for placed in page] for page in pages]


def flowed(*blocks):
    return tops(flow(blocks, x=10, top=100, bottom=0))


def test_blocks_follow_one_another_with_their_space_above():
    assert flowed(block(30), block(20, space=5)) == [[100, 65]]  # 100 - 30 - 5


def test_a_block_that_does_not_fit_begins_a_page_without_its_space():
    assert flowed(block(70), block(40, space=5)) == [[100], [100]]


def test_a_block_that_fits_to_the_point_stays():
    assert flowed(block(70), block(25, space=5)) == [[100, 25]]


def test_blocks_that_belong_together_move_together():
    assert flowed(block(50), block(20, with_next=True), block(40)) == [[100], [100, 80]]


def test_a_run_taller_than_a_page_is_parted_where_it_must_be():
    run = [block(40, with_next=True)] * 3
    assert flowed(block(10), *run, block(10)) == [[100], [100, 60], [100, 60]]


def test_a_head_is_set_again_where_a_page_begins_with_its_block():
    head = Frame(50, 15, ())
    rows = [block(40, head=head)] * 3
    assert flowed(block(15), *rows) == [[100, 85, 45], [100, 85]]
    assert flowed(block(15), *rows, *rows) == [[100, 85, 45], [100, 85, 45], [100, 85, 45]]


def test_a_head_is_set_where_it_fits_to_the_point_on_a_page_with_margins():
    filled = block(85, head=Frame(50, 15, ()))  # 15 + 85 = 100 = 110 - 10
    first, second = flow([block(40), filled], x=7, top=110, bottom=10)
    assert [(placed.x, placed.y) for placed in first] == [(7, 70)]
    assert [(placed.x, placed.y) for placed in second] == [(7, 95), (7, 10)]
    taller = block(86, head=Frame(50, 15, ()))
    assert len(flow([block(40), taller], x=7, top=110, bottom=10)[1]) == 1


def test_a_head_that_does_not_fit_with_its_block_is_left_out():
    assert flowed(block(50), block(90, head=Frame(50, 15, ()))) == [[100], [100]]


def test_a_new_page_is_begun_where_it_is_asked_for_but_never_an_empty_one():
    assert flowed(block(10, new_page=True), block(10, new_page=True)) == [[100], [100]]


def test_a_block_taller_than_a_page_is_placed_alone():
    assert flowed(block(10), block(150), block(10)) == [[100], [100], [100]]


def test_a_run_taller_than_a_page_is_not_parted_before_its_last_block():
    run = [*[block(40, with_next=True)] * 2, block(15, with_next=True), block(10)]
    assert flowed(*run) == [[100, 60], [100, 85]]


def test_the_first_and_the_last_blocks_are_kept_together():
    blocks = kept_at_the_ends([block(30) for _ in range(6)], first=2, last=3)
    assert [each.with_next for each in blocks] == [True, False, False, True, True, False]
    # 10 + 3 × 30 = 100 leave no room, and the last three are together anyway
    assert flowed(block(10), *blocks) == [[100, 90, 60, 30], [100, 70, 40]]


def test_ends_that_overlap_keep_all_blocks_together():
    blocks = kept_at_the_ends([block(30) for _ in range(3)], first=2, last=2)
    assert flowed(block(20), *blocks) == [[100], [100, 70, 40]]
