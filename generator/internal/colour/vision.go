package colour

// A view is one way of seeing: a linear map of linear-light sRGB.
type view struct {
	name   string
	matrix [3][3]float64
}

// views lists full colour vision and the three dichromacies. The matrices are those Machado,
// Oliveira and Fernandes published for severity 1.0 ("A Physiologically-based Model for Simulation
// of Color Vision Deficiency", IEEE TVCG 15(6), 2009). They act on linear light; what leaves sRGB
// is clipped.
var views = []view{
	{"full colour", [3][3]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}},
	{"protanopia", [3][3]float64{
		{0.152286, 1.052583, -0.204868},
		{0.114503, 0.786281, 0.099216},
		{-0.003882, -0.048116, 1.051998},
	}},
	{"deuteranopia", [3][3]float64{
		{0.367322, 0.860646, -0.227968},
		{0.280085, 0.672501, 0.047413},
		{-0.011820, 0.042940, 0.968881},
	}},
	{"tritanopia", [3][3]float64{
		{1.255528, -0.076749, -0.178779},
		{-0.078411, 0.930809, 0.147602},
		{0.004733, 0.691367, 0.303900},
	}},
}

// seen is the colour as that view has it.
func (v *view) seen(c rgb) rgb { return rgb(mul(&v.matrix, c)).clip() }
