"""What commands print: plain tables for people, one JSON document for scripts."""
