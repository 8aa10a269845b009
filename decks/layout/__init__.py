"""Geometry only: paper, slots, turning, stacking, fitting text, and the frames that hold it all.

One unit inside: the point (1/72 inch), with the origin at the lower left of the page.
"""
