"""What students write on: guides, planning and comparison sheets; and answers to check by."""
