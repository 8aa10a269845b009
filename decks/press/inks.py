"""The tones that things are drawn in. Every tone of text passes 4.5:1 on white (WCAG 2.2, 1.4.3).

What is written into or ticked has an edge in `rule` or `frame`, which pass 3:1 on white and on
panels (1.4.11); a hairline parts what stands apart without it.
"""

TONES = {
    "ink": "#1E2333",
    "quiet": "#5B6172",
    "rule": "#5B6172",
    "hairline": "#C9CCD6",
    "panel": "#F1F2F7",
    "frame": "#868B9E",
    "white": "#FFFFFF",
}

GREY_RIBBON = "#8A8F9A"
"""The ribbon of every team in grey ink: its texture and its name tell the team."""
