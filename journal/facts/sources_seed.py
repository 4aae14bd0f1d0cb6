"""Publications on seed, its label, when to sow and how to open the soil for it: rows of the register."""

ROWS: tuple[tuple[str, str, str, int | None, str], ...] = (
    ("kstate-seed-tips", "K-State Horticulture Newsletter", "Fall Lawn Seeding Tips (2016, no. 35)", 2016,
     "ksuhortnewsletter.org/newsletters/horticulture-newsletter-2016-no-35"),
    ("osu-reseed", "Ohio State Univ. Extension", "Reseeding thin patches in the lawn should happen now", 2022,
     "u.osu.edu/thenews/2022/09/19/reseeding-thin-patches-in-the-lawn-should-happen-now"),
    ("isu-establish", "Iowa State Univ. Extension", "Establishing a Lawn from Seed", None,
     "doczz.net/doc/4913432/establishing-a-lawn-from-seed---extension-store"),
    ("purdue-how-late", "Purdue Univ. Turfgrass Science", "How late can you seed?", None,
     "turf.purdue.edu/how-late-can-you-seed"),
    ("premium-blend", "Grounds Maintenance", "A premium blend", None,
     "grounds-mag.com/mag/grounds_maintenance_premium_blend"),
    ("ask-877015", "Ask Extension, Larimer County, Colorado", "Overseeding a bluegrass lawn, question 877015", 2024,
     "ask.extension.org/kb/faq.php?id=877015"),
    ("lsu-best-buy", "LSU AgCenter", "Best Buy on Grass Seed", 2005,
     "lsuagcenter.com/articles/connected/best-buy-on-grass-seed"),
    ("kentucky-germination", "Univ. of Kentucky Regulatory Services", "Germination Expiration dates", None,
     "rs.uky.edu/regulatory/seed/industry/Gexp.php"),
    ("psu-right-seed", "Penn State Univ. News", "Choose the Right Grass Seed for Pennsylvania Lawns", 2001,
     "news.psu.edu/story/185555/2001/09/07/choose-right-grass-seed-pennsylvania-lawns"),
    ("courier-reseeding", "Master gardeners in the Courier-Post", "Reseeding your lawn in August and September",
     2015, "courierpostonline.com/story/life/2015/08/24/reseeding-your-lawn/32281647"),
)  # fmt: skip
