package site

// Shapes of packages that are not there yet, as agreed; each goes when its package comes.

// Event stands for recite.Event.
type Event struct {
	Verse                  int32
	Word                   uint16
	From, To               uint8
	Rule                   uint8
	Count                  uint8
	When                   uint8
	Before, Unwritten      bool
	CauseWord, CauseLetter int8
	Detail                 uint8
}

// Engine stands for *recite.Engine.
type Engine interface {
	Verse(dst []Event, v int) []Event
}

// Rule stands for rules.Rule.
type Rule struct {
	ID, Name, Arabic, Translit, Family string
	Needs                              []string
	Counts                             []int
	Short, Why                         string
}

// Family stands for colour.Family.
type Family struct{ Name, Light, Dark, Form string }

// Lesson stands for lesson.Lesson.
type Lesson struct {
	ID, Name, Arabic, Translit, Family string
	Rules, Needs                       []string
	Kind                               string
	HTML                               string
	Headings                           []Heading
}

// Heading stands for lesson.Heading.
type Heading struct {
	Level    int
	ID, Text string
}
