package colour

import (
	"fmt"
	"math"
	"strconv"
)

// rgb is a colour in linear-light sRGB, each channel 0..1 (outside that range: out of gamut).
type rgb [3]float64

// lab is a colour in OKLab: L 0..1, a and b about -0.4..0.4.
type lab [3]float64

// The matrices are those Björn Ottosson published with OKLab ("A perceptual color space for image
// processing", December 2020, as amended in 2021).
var (
	rgbToLMS = [3][3]float64{
		{0.4122214708, 0.5363325363, 0.0514459929},
		{0.2119034982, 0.6806995451, 0.1073969566},
		{0.0883024619, 0.2817188376, 0.6299787005},
	}
	lmsToRGB = [3][3]float64{
		{4.0767416621, -3.3077115913, 0.2309699292},
		{-1.2684380046, 2.6097574011, -0.3413193965},
		{-0.0041960863, -0.7034186147, 1.7076147010},
	}
	rootToLab = [3][3]float64{
		{0.2104542553, 0.7936177850, -0.0040720468},
		{1.9779984951, -2.4285922050, 0.4505937099},
		{0.0259040371, 0.7827717662, -0.8086757660},
	}
	labToRoot = [3][3]float64{
		{1, 0.3963377774, 0.2158037573},
		{1, -0.1055613458, -0.0638541728},
		{1, -0.0894841775, -1.2914855480},
	}
)

func mul(m *[3][3]float64, v [3]float64) (w [3]float64) {
	for i := range w {
		w[i] = m[i][0]*v[0] + m[i][1]*v[1] + m[i][2]*v[2]
	}
	return w
}

// lmsToLab is the second half of OKLab: cone responses, cube root, rotation.
func lmsToLab(lms [3]float64) lab {
	for i := range lms {
		lms[i] = math.Cbrt(lms[i])
	}
	return mul(&rootToLab, lms)
}

func (c rgb) lab() lab { return lmsToLab(mul(&rgbToLMS, c)) }

func (c lab) rgb() rgb {
	r := mul(&labToRoot, c)
	for i, v := range r {
		r[i] = v * v * v
	}
	return mul(&lmsToRGB, r)
}

// polar gives the OKLab colour of lightness l (0..1), chroma c (0..about 0.37) and hue h in
// degrees: OKLCH in CSS Color 4.
func polar(l, c, h float64) lab {
	sin, cos := math.Sincos(h * math.Pi / 180)
	return lab{l, c * cos, c * sin}
}

// difference is deltaEOK of CSS Color 4: the Euclidean distance in OKLab. About 0.02 is the least
// the eye sees side by side.
func difference(a, b lab) float64 {
	x, y, z := a[0]-b[0], a[1]-b[1], a[2]-b[2]
	return math.Sqrt(x*x + y*y + z*z)
}

// decode and encode are the sRGB transfer function (IEC 61966-2-1).
func decode(v float64) float64 {
	if v <= 0.04045 {
		return v / 12.92
	}
	return math.Pow((v+0.055)/1.055, 2.4)
}

func encode(v float64) float64 {
	if v <= 0.0031308 {
		return v * 12.92
	}
	return 1.055*math.Pow(v, 1/2.4) - 0.055
}

func (c rgb) inGamut() bool {
	const slack = 1e-6
	for _, v := range c {
		if v < -slack || v > 1+slack {
			return false
		}
	}
	return true
}

func (c rgb) clip() rgb {
	for i, v := range c {
		c[i] = math.Min(1, math.Max(0, v))
	}
	return c
}

// hex writes the colour as #rrggbb, clipped to sRGB and rounded to 8 bits.
func (c rgb) hex() string {
	var b [3]int
	for i, v := range c.clip() {
		b[i] = int(math.Round(encode(v) * 255))
	}
	return fmt.Sprintf("#%02x%02x%02x", b[0], b[1], b[2])
}

// parse reads #rrggbb, the one form accepted.
func parse(s string) (rgb, error) {
	var c rgb
	if len(s) == 7 && s[0] == '#' {
		if n, err := strconv.ParseUint(s[1:], 16, 32); err == nil {
			for i := range c {
				c[i] = decode(float64(n>>(16-8*i)&0xff) / 255)
			}
			return c, nil
		}
	}
	return c, fmt.Errorf("colour %q: want # and six hexadecimal digits, such as #1f6f4a", s)
}
