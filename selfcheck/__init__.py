"""A guided yearly check of a household septic tank."""

__version__ = "0.1.0"
