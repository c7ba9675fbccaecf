"""Pictures described once and drawn as terminal text, as SVG and as words."""
