package recite

// signRule: the printed pause signs, the short silences and the places of prostration. All stand on
// the word's last letter.
func signRule(c *context) {
	last := len(c.w.Letters) - 1
	at := Event{Verse: c.verse, Word: uint16(c.index), Letter: uint8(last), CauseLetter: -1}
	if c.w.Silence {
		e := at
		e.Rule = Sakt
		if c.index == c.count-1 { // 18:1 and 69:28, joined to the verse after
			e.When = Join
			if c.mark.kind == saktEither {
				e.Detail = Either
			}
		}
		c.dst = append(c.dst, e)
	}
	if d := pauseDetail(c.w.Pause); d != NoDetail {
		e := at
		e.Rule, e.Detail = PauseSign, d
		c.dst = append(c.dst, e)
	}
	if c.w.Sajdah {
		e := at
		e.Rule = Sajdah
		c.dst = append(c.dst, e)
	}
}

func pauseDetail(r rune) Detail {
	switch r {
	case 0x06D6:
		return BetterOn
	case 0x06D7:
		return BetterStop
	case 0x06D8:
		return MustStop
	case 0x06D9:
		return NoStop
	case 0x06DA:
		return StopOrOn
	case 0x06DB:
		return OneOfTwo
	}
	return NoDetail
}
