// Package poem holds the lines of two classical teaching poems that list what the rules rest on:
// the sets of letters are checked against them (package verify), and the page of sources shows
// them.
//
// The poems are Tuhfat al-Atfal of Sulayman al-Jamzuri (1198 AH) and al-Muqaddimah al-Jazariyyah of
// Ibn al-Jazari (d. 833 AH), both public domain. Every line here is written FROM MEMORY, without
// vowels, and the line numbers are from memory too (61 and 107 lines; prints differ by a line or
// two): compare with a printed copy before quoting.
package poem

import (
	"fmt"
	"slices"
)

// The two poems.
const (
	Tuhfah = "Tuhfat al-Atfal"
	Jazari = "al-Muqaddimah al-Jazariyyah"
)

// Line is one line of a poem, both halves, without vowels.
type Line struct {
	Poem   string // Tuhfah or Jazari
	Number int    // from 1
	Text   string
}

// ID names a line: tuhfah-8, jazari-22.
func (l Line) ID() string {
	if l.Poem == Tuhfah {
		return fmt.Sprintf("tuhfah-%d", l.Number)
	}
	return fmt.Sprintf("jazari-%d", l.Number)
}

// Lines are the lines, by poem and number.
var Lines = []Line{
	{Tuhfah, 8, "همز فهاء ثم عين حاء مهملتان ثم غين خاء"},
	{Tuhfah, 10, "لكنها قسمان قسم يدغما فيه بغنة بينمو علما"},
	{Tuhfah, 11, "إلا إذا كانا بكلمة فلا تدغم كدنيا ثم صنوان تلا"},
	{Tuhfah, 12, "والثان إدغام بغير غنة في اللام والرا ثم كررنه"},
	{Tuhfah, 13, "والثالث الإقلاب عند الباء ميما بغنة مع الإخفاء"},
	{Tuhfah, 16, "صف ذا ثنا كم جاد شخص قد سما دم طيبا زد في تقى ضع ظالما"},
	{Tuhfah, 17, "وغن ميما ثم نونا شددا وسم كلا حرف غنة بدا"},
	{Tuhfah, 20, "فالأول الإخفاء عند الباء وسمه الشفوي للقراء"},
	{Tuhfah, 21, "والثان إدغام بمثلها أتى وسم إدغاما صغيرا يا فتى"},
	{Tuhfah, 22, "والثالث الإظهار في البقية من أحرف وسمها شفوية"},
	{Tuhfah, 25, "قبل اربع مع عشرة خذ علمه من ابغ حجك وخف عقيمه"},
	{Tuhfah, 27, "طب ثم صل رحما تفز ضف ذا نعم دع سوء ظن زر شريفا للكرم"},
	{Tuhfah, 54, "يجمعها حروف كم عسل نقص وعين ذو وجهين والطول أخص"},
	{Jazari, 22, "وبين رخو والشديد لن عمر وسبع علو خص ضغط قظ حصر"},
	{Jazari, 24, "صفيرها صاد وزاي سين قلقلة قطب جد واللين"},
	{Jazari, 67, "وأدغمن بغنة في يومن إلا بكلمة كدنيا عنونوا"},
	{Jazari, 68, "والقلب عند البا بغنة كذا لاخفا لدى باقي الحروف أخذا"},
}

// Find returns the line with the id.
func Find(id string) (Line, bool) {
	i := slices.IndexFunc(Lines, func(l Line) bool { return l.ID() == id })
	if i < 0 {
		return Line{}, false
	}
	return Lines[i], true
}
