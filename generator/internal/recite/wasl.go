package recite

// waslRule: hamzat wasl is not read when a word is read on to, and takes a vowel when the reader
// starts there (al-Jazariyyah, on hamzat wasl): fatha on the article; damma when the verb's third
// letter carries an original damma; else kasra.
func waslRule(c *context) {
	w := c.cur
	for i := range w.s {
		if w.s[i].kind != wasl {
			continue
		}
		if i != w.first {
			c.add(i, HamzatWasl, 0, Always)
			continue
		}
		c.add(i, HamzatWasl, 0, Join).before()
		c.add(i, HamzatWasl, 0, Start).before().detail(startVowel(w, i))
		if n := i + 1; n < len(w.s) && w.s[n].cons == hamza && w.s[n].v == sukun {
			c.add(n, MaddBadal, 2, Start).before().cause(0, w.s[i].letter)
		}
	}
}

// startVowel: the third letter is counted with hamzat wasl as the first; a doubled second letter is
// the second and third. Nouns (ism, ibn, imru' and their like) take a kasra whatever their third
// letter has, and so do the five verbs whose damma is borrowed: imshu, iqdu, ibnu, i'tu, imdu.
func startVowel(w *word, i int) Detail {
	if w.article == i+1 || i+1 < len(w.s) && w.s[i+1].cons == lam && w.s[i+1].doubled {
		return StartFatha
	}
	for n := i + 1; n < len(w.s) && n <= i+2; n++ {
		if w.s[n].kind == consonant && w.s[n].v != sukun {
			if w.s[n].v == damma && !(n == i+2 && borrowed(w, i)) {
				return StartDamma
			}
			break
		}
	}
	return StartKasra
}

// borrowed reports whether the two letters after hamzat wasl are those of a noun or of a verb that
// keeps the kasra.
func borrowed(w *word, i int) bool {
	switch [2]uint8{w.s[i+1].cons, w.s[i+2].cons} {
	case [2]uint8{seen, meem}, [2]uint8{ba, noon}, [2]uint8{meem, ra}, [2]uint8{qaf, dad}, [2]uint8{meem, sheen}, [2]uint8{meem, dad}:
		return true
	case [2]uint8{hamza, ta}: // i'tu; but u'tumina (2:283) has no long vowel after it
		return i+3 < len(w.s) && w.s[i+3].kind == long
	}
	return false
}
