"""What the journal is made of: entries, zones, products, quantities, days. Pure values, no disk, no screen."""
