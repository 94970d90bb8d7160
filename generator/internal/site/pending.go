package site

// Shapes of a package that is not there yet, as agreed; they go when it comes.

// Lesson stands for lesson.Lesson.
type Lesson struct {
	ID, Name, Arabic, Translit, Family string
	Rules, Needs                       []string
	Kind                               string
	HTML                               string
}
