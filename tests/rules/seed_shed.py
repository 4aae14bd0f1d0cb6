"""Seed with a poor label, and an owner's own numbers of seed, for books that hold them."""

OLD_BAG = """
[[product]]
name = "old-bag"
kind = "seed"
mix = [
    {grass="tall fescue", percent=60}, {grass="kentucky bluegrass", percent=36}, {grass="annual ryegrass", percent=2},
]
weed_seed = "0.4%"
other_crop = "0.6%"
tested = "2025-02"
rate = "3lb/k 4lb/k"
rate_basis = "pls"
purity = 95
germination = 80
"""

OWN_SEED = (
    "seed-short-season note-days 90", "seed-short-season spring-days 40", "seed-short-season stands-days 20",
    "seed-season stands-days 25", "seed-season rye-share 60", "seed-rate stands-days 9", "seed-unopened before-days 40",
    "seed-unopened stands-days 45", "seed-mix stands-days 11", "seed-mix tested-days 600", "seedbed-traffic often 2",
    "seedbed-traffic within-days 15", "seedbed-traffic stands-days 20", "not-emerged days 12",
    "not-emerged days-bluegrass 40", "seed-wash to-day 25", "seed-wash stands-days 33",
)  # fmt: skip
"""The owner's own numbers, as they are set."""
