package colour

// luminance is WCAG 2's relative luminance: 0 black, 1 white.
func (c rgb) luminance() float64 {
	return 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2]
}

// contrast is WCAG 2's contrast ratio, 1 (none) to 21 (black on white).
func contrast(a, b rgb) float64 {
	x, y := a.luminance(), b.luminance()
	if x < y {
		x, y = y, x
	}
	return (x + 0.05) / (y + 0.05)
}
