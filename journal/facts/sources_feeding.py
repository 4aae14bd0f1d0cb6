"""Publications on feeding, on water after it, and on feeding late: rows of the register."""

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    ("kstate-calendar", "K-State Extension in The Kansan", "A tall fescue calendar", 2021, "thekansan.com"),
    ("mashpee-2014", "Town of Mashpee, Massachusetts", "Town meeting warrant of October 2014, nitrogen bylaw", 2014,
     "records.mashpeema.gov/WebLink/0/doc/276380/Page10.aspx"),
    ("ndsu-urea", "North Dakota State Univ. Extension", "Understanding Urea", None,
     "ag.ndsu.edu/procrop/fer/udurea05.htm"),
    ("umn-late-fall", "Univ. of Minnesota Extension", "Rethinking Late-Fall Nitrogen Fertility for Home Lawns", 2012,
     "blog-yard-garden-news.extension.umn.edu/2012/10/rethinking-late-fall-nitrogen-fertility.html"),
    ("purdue-late-fall", "Purdue Univ. Turfgrass Science", "It's not too late to do a lot of good for your lawn", None,
     "turf.purdue.edu/its-not-too-late-to-do-a-lot-of-good-for-your-lawn"),
)  # fmt: skip
