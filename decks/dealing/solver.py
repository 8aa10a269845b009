"""HiGHS, asked for proven optima only, and to keep quiet."""

import highspy

from decks.dealing.program import Outcome, Program

OPTIONS: tuple[tuple[str, bool | int | float], ...] = (
    ("output_flag", False),
    ("threads", 1),
    ("random_seed", 0),
    ("mip_rel_gap", 0.0),
    # a limit on nodes and not on seconds: a slower machine must not come to another deal
    ("mip_max_nodes", 1_000),
)


class _Quiet(highspy.Highs):
    """A solver that gets its options before its constructor can print its name and version."""

    def enableCallbacks(self) -> None:  # noqa: N802 (the constructor calls it so)
        """Set the options, and leave callbacks off: nobody listens."""
        for option, value in OPTIONS:
            self.setOptionValue(option, value)


def solve(program: Program) -> Outcome:
    """Minimise the cost of a program."""
    highs = _Quiet()  # type: ignore[no-untyped-call]
    highs.passModel(_as_lp(program))
    highs.run()
    info = highs.getInfo()
    found = info.primal_solution_status == highspy.SolutionStatus.kSolutionStatusFeasible
    values = tuple(round(value) for value in highs.getSolution().col_value) if found else None
    return Outcome(values, info.mip_dual_bound)


def _as_lp(program: Program) -> highspy.HighsLp:
    lp = highspy.HighsLp()
    lp.num_col_, lp.num_row_ = len(program.cost), len(program.row_lower)
    lp.col_cost_, lp.col_lower_, lp.col_upper_ = program.cost, program.lower, program.upper
    lp.row_lower_, lp.row_upper_ = program.row_lower, program.row_upper
    lp.integrality_ = [highspy.HighsVarType.kInteger] * len(program.cost)
    lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
    lp.a_matrix_.start_ = program.row_start
    lp.a_matrix_.index_ = program.row_column
    lp.a_matrix_.value_ = program.row_factor
    return lp
