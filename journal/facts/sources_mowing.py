"""Publications on mowing, on lawns at rest, and on how much to water: rows of the register of sources."""

_PURDUE = "Purdue Univ. Turfgrass Science"

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    # mowing
    ("cornell-third", "Cornell Gardening", "The 'One-Third Rule'", None,
     "gardening.cornell.edu/homegardening/tidbit_template1454.html"),
    ("psu-third", "Penn State Extension in the Public Opinion", "Lawn and garden: what know before you mow", 2016,
     "publicopiniononline.com/story/life/2016/06/24/lawn-and-garden-what-know-before-you-mow/86337206"),
    ("kstate-blade", "K-State Research & Extension", "Keep mower blade sharpened for a healthy lawn", 2020,
     "ksre.k-state.edu/news/stories/2020/04/sharpen-lawnmower-blade.html"),
    ("osu-lancaster", "Ohio State Univ. Extension in the Lancaster Eagle-Gazette",
     "Mow high, frequently and with a sharp blade", 2015,
     "lancastereaglegazette.com/story/news/local/2015/04/30/mow-high-frequently-sharp-blade/26641475"),
    # drought
    ("purdue-resting", _PURDUE, "Maximizing Lawn Performance Under Drought", None,
     "turf.purdue.edu/maximizing-lawn-performance-under-drought"),
    ("purdue-survival", _PURDUE, "Facts and Advice on Turf Survival in Drought", None,
     "turf.purdue.edu/facts-and-advice-on-turf-survival-in-drought"),
    ("purdue-ppdl", "Purdue Plant and Pest Diagnostic Laboratory", "Drought-Stressed Turf", 2015,
     "ag.purdue.edu/btny/ppdl/Pages/potw09142015.aspx"),
    # an inch a week
)  # fmt: skip
