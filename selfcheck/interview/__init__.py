"""A guided conversation about anything: nodes, routes, replay; it knows no septic word."""
