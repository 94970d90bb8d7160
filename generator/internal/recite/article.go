package recite

// findArticle finds the article's lam where it is written apart from its letter, and the name
// Allah.
//
// The article is: hamzat wasl and a vowelless lam; the lam of li- or la- and a vowelless lam; a
// hamza of asking, its long alif and a vowelless lam (the six dual readings); a vowelless lam that
// opens its word before a hamza (26:176, 38:13). A lam once doubled (alladhi, al-layl) is not
// written apart. The lam of the verbs that begin so is none: see verbLam.
func (w *word) findArticle() {
	s := w.s
	at := -1
	for i := 0; i < len(s) && i < 4 && at < 0; i++ {
		switch {
		case s[i].kind == wasl && i+1 < len(s) && s[i+1].cons == lam && !s[i+1].doubled &&
			(s[i+1].v == sukun || s[i+1].v == kasra && i+2 < len(s) && s[i+2].kind == wasl): // 49:11
			at = i + 1
		case i < 2 && s[i].cons == lam && s[i].v != sukun && s[i].v != damma && vowelless(s, i+1, lam) && (i == 0 || prefix(s[0])):
			at = i + 1
		case i == 0 && s[i].cons == hamza && s[i].v == fatha && i+1 < len(s) && s[i+1].kind == long && vowelless(s, i+2, lam):
			at = i + 2
		case i == 0 && vowelless(s, 0, lam) && len(s) > 1 && s[1].cons == hamza:
			at = 0
		}
	}
	if at >= 0 && at+1 < len(s) && !verbLam(s, at) {
		w.article = at
	}
	w.findName()
}

func vowelless(s []sound, i int, c uint8) bool {
	return i < len(s) && s[i].kind == consonant && s[i].cons == c && s[i].v == sukun && !s[i].doubled
}

func prefix(s sound) bool { return s.v == fatha && (s.cons == waw || s.cons == fa || s.cons == hamza) }

// verbLam reports whether the vowelless lam at i is the first letter of a verb: iltaqa, iltaqata,
// iltaqama (ta and qaf with fatha), iltamisu (ta, meem with kasra), iltaffat (ta, fa), il'an
// (33:68), ilghaw (41:26).
func verbLam(s []sound, i int) bool {
	at := func(k int) sound {
		if i+k < len(s) {
			return s[i+k]
		}
		return sound{}
	}
	a, b, c := at(1), at(2), at(3)
	switch {
	case a.cons == ta && a.v == fatha && b.kind == consonant:
		return b.cons == qaf && b.v == fatha || b.cons == meem && b.v == kasra || b.cons == fa && b.v == fatha
	case a.cons == ayn && a.v == fatha:
		return vowelless(s, i+2, noon) && c.cons == ha
	case a.cons == ghayn && a.v == fatha:
		return vowelless(s, i+2, waw) && (i+3 == len(s) || c.kind == silent)
	}
	return false
}

// findName finds the name Allah: the article and a lam with fatha, or li- and a doubled lam with
// fatha, then ha, and then the end of the word or the doubled meem of allahumma. (62:11 and 77:31
// go on with other letters.) The Name's first lam is not reported as an article.
func (w *word) findName() {
	s := w.s
	at := -1
	switch {
	case w.article >= 0:
		at = w.article + 1
	case len(s) > 2 && s[0].cons == lam && s[0].v == kasra:
		at = 1
	case len(s) > 3 && s[1].cons == lam && s[1].v == kasra && prefix(s[0]):
		at = 2
	default:
		return
	}
	if at+1 >= len(s) || s[at].cons != lam || s[at].v != fatha || s[at+1].cons != ha || s[at+1].kind != consonant {
		return
	}
	if w.article < 0 && !s[at].doubled {
		return
	}
	if rest := s[at+2:]; len(rest) == 0 || len(rest) == 1 && rest[0].cons == meem && rest[0].v == fatha && s[at+1].v == damma {
		w.name = at
	}
}

// articleRule: the lam of the article. Sun letters merge it, before moon letters it is clear
// (Tuhfat al-Atfal, on the lam of the article).
func articleRule(c *context) {
	w := c.cur
	if w.article < 0 || w.name >= 0 {
		return
	}
	i := w.article
	n := i + 1
	if w.s[n].kind == wasl { // 49:11: the lam takes a kasra before the noun's own hamzat wasl
		c.add(i, MoonLam, 0, Always).cause(0, w.s[n].letter)
		return
	}
	switch {
	case sun.has(w.s[n].cons):
		c.add(i, SunLam, 0, Always).cause(0, w.s[n].letter)
	case moon.has(w.s[n].cons):
		c.add(i, MoonLam, 0, Always).cause(0, w.s[n].letter)
	}
}
