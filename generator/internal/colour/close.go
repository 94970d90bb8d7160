package colour

// CloseBelow is the difference (deltaEOK) under which two pencils are called
// too close. Ours: thin strokes need several times the 0.02 that is just seen
// between large patches side by side; no standard gives a figure.
const CloseBelow = 0.08

// rounding is how much the published matrices, cut to six places, may be off: a
// view has to bring colours nearer by more than that to be the one named.
const rounding = 2e-6

// TooClose compares two colours that a reader has set (#rrggbb): which way of
// seeing brings them nearest, how far apart they are then (deltaEOK), and
// whether that is under CloseBelow. An error names the colour that cannot be
// read.
func TooClose(a, b string) (which string, diff float64, close bool, err error) {
	x, err := parse(a)
	if err != nil {
		return "", 0, false, err
	}
	y, err := parse(b)
	if err != nil {
		return "", 0, false, err
	}
	for i := range views {
		v := &views[i]
		d := difference(v.seen(x).lab(), v.seen(y).lab())
		if i == 0 || d < diff-rounding {
			which, diff = v.Name, d
		}
	}
	return which, diff, diff < CloseBelow, nil
}

// Contrast is WCAG 2's contrast ratio of two colours (#rrggbb), 1 to 21; text
// wants 4.5.
func Contrast(a, b string) (float64, error) {
	x, err := parse(a)
	if err != nil {
		return 0, err
	}
	y, err := parse(b)
	if err != nil {
		return 0, err
	}
	return contrast(x, y), nil
}
