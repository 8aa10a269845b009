"""Workbooks that we write: a blank one to fill in, and a marked copy of the teacher's own.

The modules that write them load a library for it, so nothing of them is loaded from here.
"""
