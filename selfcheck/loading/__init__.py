"""Content files become models, or one error that names file, id and key."""
