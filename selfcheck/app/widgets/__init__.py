"""Parts of screens of the Textual face."""
