"""Whole screens of the Textual face."""
