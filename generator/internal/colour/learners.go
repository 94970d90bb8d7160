package colour

// learners is how many colours tell learners apart. More of them would look alike; two learners with
// one colour still have their letters and names.
const learners = 8

// learnerColours are the discs beside the names of learners, light and dark: equal steps of hue at
// the levels of the families, each as far as can be from the one before, since the first learners of
// a device have the first of them. The letter on a disc has the colour of the page.
func learnerColours() []hue {
	hues := wheel(learners)
	out := make([]hue, learners)
	for i, k := range arrange(distances(hues)) {
		out[i] = hues[k]
	}
	return out
}
