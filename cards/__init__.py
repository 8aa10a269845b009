"""Content: what a row of the teacher's workbook says, and whether it can be trusted."""
