"""Publications on the weather, the grass and the trees beside which a product is put down: rows of the register."""

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    ("purdue-potw", "Purdue Univ. Plant and Pest Diagnostic Laboratory", "Picture of the week, 2 October 2017", 2017,
     "ag.purdue.edu/btny/ppdl/Pages/POTW2017/POTW10022017.aspx"),
    ("kstate-salina", "K-State Extension in the Salina Post", "Column on broadleaf weeds (W. Upham)", None,
     "salinapost.com"),
    ("purdue-drought", "Purdue Univ. (Patton)", "Thoughts on applying herbicides to turf during a drought", None,
     "turfmagazine.com/the-latest/thoughts-on-applying-herbicides-to-turf-during-a-drought"),
    ("delaware-trees", "Univ. of Delaware Cooperative Extension, Kent County", "Herbicide Damage to Trees", 2008,
     "kentcoopextension.blogspot.com/2008"),
    ("ndsu-trees", "North Dakota State Univ. Extension", "Yard and Garden Report: Herbicide Injury to Trees", None,
     "ag.ndsu.edu"),
    ("ohio-dandelion", "Ohio State Univ.", "Dandelion", None, "webgarden.osu.edu"),
    ("purdue-ester", "Purdue Univ. (Reicher) in SportsField Management", "Study of ester and amine forms in spring",
     2013, "sportsfieldmanagementonline.com"),
    ("label-82514", "Label text of a turf mixture holding 2,4-D", "Directions for use (not on residential turfgrass)",
     None, "greenbook.net/node/82514"),
)  # fmt: skip
