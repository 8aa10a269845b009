"""Type in lines: the fonts, and text set as paragraphs, tables and pages."""
