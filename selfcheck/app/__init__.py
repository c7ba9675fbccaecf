"""The Textual face."""
