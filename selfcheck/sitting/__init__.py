"""One household at the table: what both faces do with it, from opening its folder to the verdict."""

from selfcheck.sitting.table import HomeFacts, Sitting, Unfinished

__all__ = ["HomeFacts", "Sitting", "Unfinished"]
