"""The seeded tank with known truth."""
