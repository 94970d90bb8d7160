package lesson

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode"
)

// place names words of a verse and what is said of them. A line of a verse block is
//
//	REF [word N | words A-B] [join] rule RULE [| note]
//
// and within a sentence it stands in double brackets:
//
//	[[REF.N]] [[REF.A-B]] [[REF.N rule RULE]] [[REF.N not RULE]] [[REF.A-B join rule RULE]] [[REF.N join not RULE]]
//
// The words are read as they stand: the reader starts on the first and stops on the last, or reads
// on after it where it says join. "not" says that the rule has no place there, and is checked as
// well.
type place struct {
	surah, ayah int
	first, last int // words from 1; 0 is the whole verse
	join        bool
	rule        string
	ruleOff     int // offset of the rule's id in the line
	not         bool
	note        int // offset of the note in the line, -1 if there is none
}

func (p place) String() string {
	s := fmt.Sprintf("%d:%d", p.surah, p.ayah)
	switch {
	case p.first == 0:
	case p.first == p.last:
		s += fmt.Sprintf(" word %d", p.first)
	default:
		s += fmt.Sprintf(" words %d-%d", p.first, p.last)
	}
	return s
}

var (
	refForm   = regexp.MustCompile(`^([0-9]{1,3}):([0-9]{1,3})$`)
	wordsForm = regexp.MustCompile(`^([0-9]{1,3})(?:-([0-9]{1,3}))?$`)
)

const (
	lineForm   = "write REF [word N | words A-B] [join] rule RULE [| note], such as 78:14 word 1 rule noon-ikhfa"
	inlineForm = "write [[78:14.1]], [[78:14.1-2]], [[78:14.1 rule noon-ikhfa]] or [[78:14.1 not ghunnah]]"
)

// token is a run of characters without space, at an offset of its line.
type token struct {
	s   string
	off int
}

func tokens(s string) (list []token) {
	off := 0
	for f := range strings.FieldsSeq(s) {
		off += strings.Index(s[off:], f)
		list = append(list, token{f, off})
		off += len(f)
	}
	return list
}

// parseLine reads one line of a verse block. The problem's offset is within the line.
func parseLine(line string) (place, *problem) {
	p := place{note: -1}
	head, note, ok := strings.Cut(line, "|")
	if ok && strings.TrimSpace(note) != "" {
		p.note = len(head) + 1 + len(note) - len(strings.TrimLeftFunc(note, unicode.IsSpace))
	}
	list := tokens(head)
	if len(list) == 0 {
		return p, &problem{0, "there is no verse in this line", lineForm}
	}
	if bad := p.parseRef(list[0], lineForm); bad != nil {
		return p, bad
	}
	list = list[1:]
	if len(list) > 0 && (list[0].s == "word" || list[0].s == "words") {
		if len(list) == 1 {
			return p, &problem{list[0].off, fmt.Sprintf("%q names no word", list[0].s), lineForm}
		}
		if bad := p.parseWords(list[1], lineForm); bad != nil {
			return p, bad
		}
		list = list[2:]
	}
	bad := p.parseRule(list, lineForm)
	if bad == nil && p.rule == "" {
		bad = &problem{len(strings.TrimRight(head, " ")), "the line names no rule", lineForm}
	}
	if bad == nil && p.not {
		bad = &problem{list[0].off, "a worked example shows a rule", "use not within a sentence"}
	}
	return p, bad
}

// parseInline reads what stands between double brackets.
func parseInline(s string) (place, *problem) {
	p := place{note: -1}
	list := tokens(s)
	if len(list) == 0 {
		return p, &problem{0, "the brackets are empty", inlineForm}
	}
	ref, words, ok := strings.Cut(list[0].s, ".")
	if bad := p.parseRef(token{ref, list[0].off}, inlineForm); bad != nil {
		return p, bad
	}
	if !ok {
		return p, &problem{list[0].off, fmt.Sprintf("%q names no word", list[0].s), inlineForm}
	}
	if bad := p.parseWords(token{words, list[0].off + len(ref) + 1}, inlineForm); bad != nil {
		return p, bad
	}
	return p, p.parseRule(list[1:], inlineForm)
}

func (p *place) parseRef(t token, form string) *problem {
	m := refForm.FindStringSubmatch(t.s)
	if m == nil {
		return &problem{t.off, fmt.Sprintf("%q is not a verse", t.s), form}
	}
	p.surah, _ = strconv.Atoi(m[1])
	p.ayah, _ = strconv.Atoi(m[2])
	return nil
}

func (p *place) parseWords(t token, form string) *problem {
	m := wordsForm.FindStringSubmatch(t.s)
	if m == nil {
		return &problem{t.off, fmt.Sprintf("%q is no word or run of words", t.s), form}
	}
	p.first, _ = strconv.Atoi(m[1])
	p.last = p.first
	if m[2] != "" {
		p.last, _ = strconv.Atoi(m[2])
	}
	if p.first < 1 || p.last < p.first {
		return &problem{t.off, fmt.Sprintf("words %s", t.s), "words count from 1, the first before the last"}
	}
	return nil
}

// parseRule reads "rule RULE" or "not RULE", perhaps after "join", or nothing.
func (p *place) parseRule(list []token, form string) *problem {
	if len(list) > 0 && list[0].s == "join" {
		p.join = true
		list = list[1:]
	}
	if len(list) == 0 {
		return nil
	}
	if (list[0].s != "rule" && list[0].s != "not") || len(list) != 2 {
		return &problem{list[0].off, fmt.Sprintf("found %q", list[0].s), form}
	}
	p.not = list[0].s == "not"
	p.rule, p.ruleOff = list[1].s, list[1].off
	return nil
}
