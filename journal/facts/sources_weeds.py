"""Publications on the seasons of weeds and insects: rows of the register of sources."""

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    ("purdue-too-late", "Purdue Univ. Turfgrass Science", "How Late is Too Late to Control Broadleaf Weeds?", 2013,
     "purdueturftips.blogspot.com/2013/11"),
    ("iastate-barrier", "Iowa State Univ. Extension",
     "When should I apply a preemergence herbicide to my lawn to control crabgrass?", None,
     "hortnews.extension.iastate.edu/faq/when-should-i-apply-preemergence-herbicide-my-lawn-control-crabgrass"),
    ("msu-chafer", "Michigan State Univ. Extension", "Masked chafer (integrated pest management page)", None,
     "msue.anr.msu.edu"),
    ("umn-irac", "Univ. of Minnesota Extension", "New turf insecticides and IRAC classifications", None,
     "extension.umn.edu"),
)  # fmt: skip
