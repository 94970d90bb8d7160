package recite

// The 28 consonants of the sound layer. Hamza is one consonant however it is seated; alif is none.
const (
	none uint8 = iota
	hamza
	ba
	ta
	tha
	jeem
	hha
	kha
	dal
	dhal
	ra
	zay
	seen
	sheen
	sad
	dad
	tta
	zza
	ayn
	ghayn
	fa
	qaf
	kaf
	lam
	meem
	noon
	ha
	waw
	ya
	numCons
)

// consRunes writes each consonant as one letter, for showing sets.
var consRunes = [numCons]rune{0, 'ء', 'ب', 'ت', 'ث', 'ج', 'ح', 'خ', 'د', 'ذ', 'ر', 'ز', 'س', 'ش', 'ص', 'ض', 'ط', 'ظ', 'ع', 'غ', 'ف', 'ق', 'ك', 'ل', 'م', 'ن', 'ه', 'و', 'ي'}

// consOf maps U+0620–U+064A to consonants; alif, alif maqsurah and tatweel are decided from their
// signs and neighbours.
var consOf = func() (t [0x2B]uint8) {
	for c, r := range consRunes {
		if c > 0 {
			t[r-0x620] = uint8(c)
		}
	}
	t[0x629-0x620] = ta // ta marbuta
	for _, r := range []rune{0x623, 0x624, 0x625, 0x626} {
		t[r-0x620] = hamza
	}
	return t
}()

type set uint32

func setOf(letters string) (s set) {
	for _, r := range letters {
		if r >= 0x620 && r <= 0x64A {
			s |= 1 << consOf[r-0x620]
		}
	}
	return s
}

func (s set) has(c uint8) bool { return s>>c&1 != 0 }

func (s set) String() string {
	var out []rune
	for c := uint8(1); c < numCons; c++ {
		if s.has(c) {
			out = append(out, consRunes[c])
		}
	}
	return string(out)
}

// Letter sets. Each is that of the line named; the lines themselves are tested in package verify.
var (
	raised     = setOf("خصضغطقظ")         // al-Jazariyyah, on the letters' qualities
	echo       = setOf("قطبجد")           // al-Jazariyyah, on the letters' qualities
	throat     = setOf("ءهعحغخ")          // Tuhfat al-Atfal, on noon sakinah and tanween
	mergeNasal = setOf("ينمو")            // Tuhfat al-Atfal, the same chapter
	mergePlain = setOf("لر")              // Tuhfat al-Atfal, the same chapter
	hidden     = setOf("تثجدذزسشصضطظفقك") // Tuhfat al-Atfal, the same chapter
	sun        = setOf("تثدذرزسشصضطظلن")  // Tuhfat al-Atfal, on the lam of the article
	moon       = setOf("ءبجحخعغفقكمهوي")  // Tuhfat al-Atfal, the same chapter
	openSix    = setOf("نقصعسلكم")        // Tuhfat al-Atfal, on the madd of the openings
	openTwo    = setOf("حيطهر")           // Tuhfat al-Atfal, the same chapter
	nasal      = setOf("نم")
)

// Sets returns the letters that decide a rule, for the rules that a set of letters decides: the
// letters that bear it (heavy-letter, qalqalah, ghunnah, madd-lazim-letter) or that come after the
// one that bears it.
func Sets() map[RuleID]string {
	all := set(1<<numCons - 2)
	return map[RuleID]string{
		HeavyLetter:       raised.String(),
		SunLam:            sun.String(),
		MoonLam:           moon.String(),
		Ghunnah:           nasal.String(),
		NoonIzhar:         throat.String(),
		NoonIzharMutlaq:   setOf("وي").String(),
		NoonIdghamGhunnah: mergeNasal.String(),
		NoonIdgham:        mergePlain.String(),
		NoonIqlab:         setOf("ب").String(),
		NoonIkhfa:         hidden.String(),
		MeemIkhfa:         setOf("ب").String(),
		MeemIdgham:        setOf("م").String(),
		MeemIzhar:         (all &^ setOf("بم")).String(),
		Qalqalah:          echo.String(),
		MaddLazimLetter:   openSix.String(),
	}
}
