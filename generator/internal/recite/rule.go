package recite

// RuleID is the place of a rule in the one ordered list of ids. Ids never change: annotate,
// lessons, browser data and stored logs use them.
type RuleID uint8

// The rules, in the order of the list.
const (
	HeavyLetter RuleID = iota
	HeavyLam
	LightLam
	HeavyRa
	LightRa
	HamzatWasl
	SunLam
	MoonLam
	SilentLetter
	Ghunnah
	NoonIzhar
	NoonIzharMutlaq
	NoonIdghamGhunnah
	NoonIdgham
	NoonIqlab
	NoonIkhfa
	MeemIkhfa
	MeemIdgham
	MeemIzhar
	IdghamMithlayn
	IdghamMutajanisayn
	IdghamMutaqaribayn
	Qalqalah
	MaddTabii
	MaddBadal
	MaddIwad
	MaddSilahShort
	MaddSilahLong
	MaddMuttasil
	MaddMunfasil
	MaddLazim
	MaddLazimLetter
	MaddArid
	MaddLin
	StopForm
	PauseSign
	Sakt
	Imalah
	Ishmam
	TasHil
	SadAsSeen
	Sajdah
	HeavyRaSakinah
	LightRaSakinah
	NumRules = iota
)

var ruleNames = [NumRules]string{
	"heavy-letter", "heavy-lam", "light-lam", "heavy-ra", "light-ra", "hamzat-wasl", "sun-lam", "moon-lam",
	"silent-letter", "ghunnah", "noon-izhar", "noon-izhar-mutlaq", "noon-idgham-ghunnah", "noon-idgham", "noon-iqlab",
	"noon-ikhfa", "meem-ikhfa", "meem-idgham", "meem-izhar", "idgham-mithlayn", "idgham-mutajanisayn",
	"idgham-mutaqaribayn", "qalqalah", "madd-tabii", "madd-badal", "madd-iwad", "madd-silah-short", "madd-silah-long",
	"madd-muttasil", "madd-munfasil", "madd-lazim", "madd-lazim-letter", "madd-arid", "madd-lin", "stop-form",
	"pause-sign", "sakt", "imalah", "ishmam", "tas-hil", "sad-as-seen", "sajdah", "heavy-ra-sakinah", "light-ra-sakinah",
}

// String returns the rule's id.
func (r RuleID) String() string {
	if int(r) < NumRules {
		return ruleNames[r]
	}
	return "unknown"
}

// ParseRule returns the rule with the given id.
func ParseRule(id string) (RuleID, bool) {
	for i, n := range ruleNames {
		if n == id {
			return RuleID(i), true
		}
	}
	return 0, false
}

// When says in which reading an event holds.
type When uint8

// An event holds always, only when the reader reads on across its boundary, only at a stop there,
// or only at a start.
const (
	Always When = iota
	Join
	Stop
	Start
)

var whenNames = [...]string{"always", "join", "stop", "start"}

// String returns always, join, stop or start.
func (w When) String() string { return whenNames[w] }

// Event is one place where one rule acts.
type Event struct {
	Verse       int32  // index in mushaf.Text.Verses
	Word        uint16 // index in the verse
	Letter      uint8  // the letter of the word that bears the rule, from 0
	Rule        RuleID
	Count       uint8 // counts (lengths of one short vowel) held at the default setting; 0 where the rule holds nothing
	When        When
	Before      bool // When speaks of the boundary before the word; else of the one after it. Set on every Start
	Unwritten   bool // the sound is not written: never required of a child who marks
	CauseWord   int8 // the word of the letter that causes the rule: 0 this one, 1 the next, -1 the one before
	CauseLetter int8 // that letter in its word, or -1 where no single letter does
	Detail      Detail
}

// Holds reports whether the event holds for a reader who stops before its word, and after it, or
// reads on there.
func (e *Event) Holds(stopBefore, stopAfter bool) bool {
	stop := stopAfter
	if e.Before {
		stop = stopBefore
	}
	return e.When == Always || stop == (e.When != Join)
}

// Detail says more about an event than its rule does.
type Detail uint8

// Details. Degrees of a heavy letter and of qalqalah, the vowel a start takes, what a stop changes,
// what a sign asks.
const (
	NoDetail      Detail = iota
	Degree1              // heavy letter with fatha and a long alif after it
	Degree2              // with fatha
	Degree3              // with damma
	Degree4              // with sukun
	Degree5              // with kasra
	Inside               // qalqalah reading on
	AtStop               // qalqalah where the reader stops
	AtStopDoubled        // the same with shadda
	StartFatha           // hamzat wasl, vowel when starting
	StartDamma
	StartKasra
	HeavyGhunnah // the nasal sound is heavy: a raised letter comes after it
	Either       // two ways are accepted; the event shown is the default
	EitherAtStop // the same, but only where the reader stops
	Incomplete   // the first letter keeps part of its sound
	BeforeDoubled
	BeforeSukun
	ToSukun      // stop: the last vowel falls
	TanweenFalls // stop: tanween with damma or kasra falls
	ToAlif       // stop: tanween with fatha becomes a long alif
	ToHa         // stop: ta marbuta becomes ha
	SilahFalls   // stop: the small waw or ya falls
	AlifRead     // stop: an alif that is silent reading on is read
	ToLong       // stop: a vowelled ya or waw becomes long
	LongRead     // stop: a long vowel dropped before hamzat wasl is read
	MustStop
	NoStop
	StopOrOn
	BetterOn
	BetterStop
	OneOfTwo
	ReadSeen
	ReadSad
	RaisedAfter // ra without a vowel after kasra: a raised letter follows, so it is heavy all the same
	AfterWasl   // ra without a vowel after hamzat wasl: no vowel before it is its own, so it is heavy
	FourOrSix   // the ayn of the opening letters: both lengths are accepted, six is the default
	TwoOrSix    // the meem of 3:1: read on, both lengths are accepted, six is the default; stopped on, six alone
	SixAtStop   // madd muttasil on a hamza that the word ends in: stopped on, six is accepted too
	Tilted      // ra with imalah: light without a kasra
	numDetails
)

var detailNames = [numDetails]string{
	"", "degree-1", "degree-2", "degree-3", "degree-4", "degree-5", "inside", "at-stop", "at-stop-doubled",
	"start-fatha", "start-damma", "start-kasra", "heavy-ghunnah", "either", "either-at-stop", "incomplete", "before-doubled",
	"before-sukun", "to-sukun", "tanween-falls", "to-alif", "to-ha", "silah-falls", "alif-read", "to-long", "long-read",
	"must-stop", "no-stop", "stop-or-on", "better-on", "better-stop", "one-of-two", "read-seen", "read-sad",
	"raised-after", "after-wasl", "four-or-six", "two-or-six",
	"six-at-stop", "tilted",
}

// String returns the detail's id, empty for none.
func (d Detail) String() string { return detailNames[d] }

// Details returns every detail's id in order; the first is empty.
func Details() []string { return detailNames[:] }
