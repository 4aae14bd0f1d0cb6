"""Publications on frost dates and normals: rows of the register of sources."""

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    ("ncei-freeze", "NOAA National Centers for Environmental Information", "Last Freeze/Frost Probability (maps)", None,
     "ncei.noaa.gov"),
    ("nws-freeze", "National Weather Service, Jackson, Mississippi", "Frost and freeze dates, 1981-2010", None,
     "weather.gov/jan/frostfreeze"),
    ("mrcc-freeze", "Midwestern Regional Climate Center", "About the freeze date tool", None,
     "mrcc.purdue.edu/mw_climate/freezeDateToolAbout.jsp"),
)  # fmt: skip
