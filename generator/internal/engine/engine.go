// Package engine drives the three browser engines that the site must work in, through one
// interface: Chromium over its own protocol, Firefox over WebDriver BiDi, and WebKit (WebKitGTK's
// MiniBrowser) over WebDriver.
//
// Each browser starts once; a Session is a tab with storage of its own. What an engine's driver
// cannot do is an error that wraps ErrCannot, never a silent nothing. A browser that is not
// installed is an error that names the package. Used by tests only.
package engine

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"image"
	"time"
)

// The viewport of every new session in CSS pixels, and device pixels for each.
const (
	Width, Height = 390, 844
	Scale         = 2
)

// ErrCannot says that the engine's driver has no such thing.
var ErrCannot = errors.New("the driver of this engine cannot do this")

// A Browser is one running browser.
type Browser interface {
	Name() string    // chromium, firefox or webkit
	Version() string // as the browser tells it
	// New opens an empty tab in a fresh profile.
	New(ctx context.Context) (Session, error)
	Close()
}

// A Session is one tab, of Width by Height CSS pixels until it is resized. Its methods wait for the browser's answer;
// ctx limits them.
type Session interface {
	// Open goes to an address and waits until the page has loaded.
	Open(ctx context.Context, address string) error
	// Reload loads the page again and waits.
	Reload(ctx context.Context) error
	// Eval gives the value of a JavaScript expression as JSON, null for undefined; promises are
	// awaited.
	Eval(ctx context.Context, expression string) (json.RawMessage, error)
	// Point moves a finger or mouse. What is down at the end of the steps stays so for the next.
	Point(ctx context.Context, kind Kind, steps []Step) error
	// Type sends text, or one key named by Key*, to what has the focus.
	Type(ctx context.Context, text string) error
	// Screenshot is what the viewport shows, Scale pixels for each CSS pixel.
	Screenshot(ctx context.Context) (image.Image, error)
	// Resize gives the viewport another size in CSS pixels.
	Resize(ctx context.Context, width, height int) error
	// Offline takes the network away from the tab, or gives it back.
	Offline(ctx context.Context, off bool) error
	// Media shows the page in print media, or in forced colours.
	Media(ctx context.Context, m Media) error
	// Print prints the page to a PDF by its own page size.
	Print(ctx context.Context) ([]byte, error)
	// Trouble lists the errors and warnings of the console so far. The error wraps ErrCannot where
	// the driver does not tell them.
	Trouble() ([]string, error)
	Close()
}

// Kind is what touches the screen.
type Kind string

const (
	Touch Kind = "touch"
	Mouse Kind = "mouse"
)

// Step is one step of a pointer: To a place in CSS pixels of the viewport, Down, Up, or a pause.
type Step struct {
	Do   Do
	X, Y float64
	Wait time.Duration
}

// Do is what a step does.
type Do string

const (
	To   Do = "pointerMove"
	Down Do = "pointerDown"
	Up   Do = "pointerUp"
	Wait Do = "pause"
)

// Media is what the page is shown on.
type Media struct {
	Print  bool
	Forced bool // forced colours
}

// Keys, by the code points WebDriver gives them.
const (
	KeyEnter, KeyEscape, KeyTab          = "\ue007", "\ue00c", "\ue004"
	KeyLeft, KeyUp, KeyRight, KeyDown    = "\ue012", "\ue013", "\ue014", "\ue015"
	KeyBackspace, KeyHome, KeyEnd, KeySp = "\ue003", "\ue011", "\ue010", " "
)

// Tap is one touch at a place.
func Tap(x, y float64) []Step {
	return []Step{{Do: To, X: x, Y: y}, {Do: Down}, {Do: Wait, Wait: 30 * time.Millisecond}, {Do: Up}}
}

// DoubleTap is two touches as fast as a finger makes them.
func DoubleTap(x, y float64) []Step {
	return append(append(Tap(x, y), Step{Do: Wait, Wait: 60 * time.Millisecond}), Tap(x, y)[1:]...)
}

// Hold is a press of a given time.
func Hold(x, y float64, d time.Duration) []Step {
	return []Step{{Do: To, X: x, Y: y}, {Do: Down}, {Do: Wait, Wait: d}, {Do: Up}}
}

// Stroke goes from one place to another in n steps with the pointer down.
func Stroke(x0, y0, x1, y1 float64, n int) []Step {
	out := []Step{{Do: To, X: x0, Y: y0}, {Do: Down}}
	for i := 1; i <= n; i++ {
		k := float64(i) / float64(n)
		out = append(out, Step{Do: To, X: x0 + (x1-x0)*k, Y: y0 + (y1-y0)*k}, Step{Do: Wait, Wait: 16 * time.Millisecond})
	}
	return append(out, Step{Do: Up})
}

// wrapped makes an expression one that gives a promise of a string of JSON, so that every driver
// carries it alike.
func wrapped(expression string) string {
	return "(async () => JSON.stringify(await (" + expression + "\n)) ?? \"null\")()"
}

func cannot(name, what string) error { return fmt.Errorf("%s: %s: %w", name, what, ErrCannot) }
