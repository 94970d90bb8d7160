package engine

import (
	"context"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"image"
	"slices"
	"time"
)

// firefoxTab is a tab in a user context, a store of its own.
type firefoxTab struct {
	f             *firefox
	user, context string
	trouble       []complaint // guarded by f.mu, as are leavings
	leavings      []leaving
}

// complaint is what the console said, and when (ms since 1970).
type complaint struct {
	at   int64
	text string
}

// leaving is the time (ms since 1970) from when a page is about to be left until the next one is
// there, or cannot be had; to is 0 until then. It begins when the tab is told to leave: what breaks
// off is often said some ms before Firefox says that the page is left.
type leaving struct{ from, to int64 }

// leave begins a leaving, unless one has begun; left ends it. Both need f.mu.
func (t *firefoxTab) leave(at int64) {
	if n := len(t.leavings); n == 0 || t.leavings[n-1].to != 0 {
		t.leavings = append(t.leavings, leaving{from: at})
	}
}

func (t *firefoxTab) left(at int64) {
	if n := len(t.leavings); n > 0 && t.leavings[n-1].to == 0 {
		t.leavings[n-1].to = at
	}
}

// brokenOff is what Firefox says, without an address, when the body of a worker's answer does not
// come to its end. That is so of every answer that is on its way, most often the icon's, when its
// page is left. What a worker does wrong is said in other words, with the address.
const brokenOff = "error: Failed to load \u2018\u2019. A ServiceWorker intercepted the request and encountered an unexpected error."

// do sends a command about this tab.
func (t *firefoxTab) do(ctx context.Context, method string, params map[string]any, into any) error {
	if params == nil {
		params = map[string]any{}
	}
	params["context"] = t.context
	return t.f.call(ctx, method, params, into)
}

func (t *firefoxTab) Open(ctx context.Context, address string) error {
	return t.load(ctx, "browsingContext.navigate", map[string]any{"url": address, "wait": "complete"})
}

func (t *firefoxTab) Reload(ctx context.Context) error {
	return t.load(ctx, "browsingContext.reload", map[string]any{"wait": "complete"})
}

// load leaves the page by a command; where only what is after the # changes, nothing is left, and
// Firefox says nothing of it.
func (t *firefoxTab) load(ctx context.Context, method string, params map[string]any) error {
	from := time.Now().UnixMilli()
	t.f.mu.Lock()
	t.leave(from)
	t.f.mu.Unlock()
	err := t.do(ctx, method, params, nil)
	t.f.mu.Lock()
	defer t.f.mu.Unlock()
	if t.leavings[len(t.leavings)-1].from == from {
		t.left(time.Now().UnixMilli())
	}
	return err
}

func (t *firefoxTab) Eval(ctx context.Context, expression string) (json.RawMessage, error) {
	var got struct {
		Type             string
		Result           struct{ Value json.RawMessage }
		ExceptionDetails struct{ Text string }
	}
	err := t.f.call(ctx, "script.evaluate", map[string]any{
		"expression": wrapped(expression), "awaitPromise": true, "target": map[string]any{"context": t.context},
		"userActivation": false, "resultOwnership": "none",
	}, &got)
	if err != nil {
		return nil, err
	}
	if got.Type != "success" {
		return nil, errors.New(got.ExceptionDetails.Text)
	}
	var s string
	if err := json.Unmarshal(got.Result.Value, &s); err != nil {
		return nil, err
	}
	return json.RawMessage(s), nil
}

func (t *firefoxTab) Point(ctx context.Context, kind Kind, steps []Step) error {
	return t.do(ctx, "input.performActions", map[string]any{"actions": pointer(kind, steps)}, nil)
}

func (t *firefoxTab) Type(ctx context.Context, text string) error {
	return t.do(ctx, "input.performActions", map[string]any{"actions": keystrokes(text)}, nil)
}

func (t *firefoxTab) Screenshot(ctx context.Context) (image.Image, error) {
	var got struct{ Data string }
	if err := t.do(ctx, "browsingContext.captureScreenshot", map[string]any{"origin": "viewport"}, &got); err != nil {
		return nil, err
	}
	return picture(got.Data)
}

func (t *firefoxTab) Resize(ctx context.Context, width, height int) error {
	return t.do(ctx, "browsingContext.setViewport", map[string]any{
		"viewport": map[string]any{"width": width, "height": height}, "devicePixelRatio": Scale,
	}, nil)
}

func (t *firefoxTab) Offline(ctx context.Context, off bool) error {
	var how any
	if off {
		how = map[string]any{"type": "offline"}
	}
	err := t.f.call(ctx, "emulation.setNetworkConditions", map[string]any{"contexts": []string{t.context}, "networkConditions": how}, nil)
	var e *wireError
	if errors.As(err, &e) && e.Code == "unknown command" {
		return cannot("firefox", "offline")
	}
	return err
}

func (t *firefoxTab) Media(_ context.Context, m Media) error {
	if m == (Media{}) {
		return nil
	}
	return cannot("firefox", fmt.Sprintf("media %+v", m))
}

// Print shrinks nothing and takes the page's own size. BiDi asks for a paper all the same, which
// the page's size replaces.
func (t *firefoxTab) Print(ctx context.Context) ([]byte, error) {
	var got struct{ Data string }
	if err := t.do(ctx, "browsingContext.print", map[string]any{"background": true, "shrinkToFit": false}, &got); err != nil {
		return nil, err
	}
	return base64.StdEncoding.DecodeString(got.Data)
}

// Trouble leaves out the answers that were broken off by leaving their page.
func (t *firefoxTab) Trouble() ([]string, error) {
	t.f.mu.Lock()
	defer t.f.mu.Unlock()
	var list []string
	for _, c := range t.trouble {
		left := func(l leaving) bool { return l.from <= c.at && (l.to == 0 || c.at <= l.to) }
		if c.text != brokenOff || !slices.ContainsFunc(t.leavings, left) {
			list = append(list, c.text)
		}
	}
	return list, nil
}

func (t *firefoxTab) Close() {
	ctx, cancel := context.WithTimeout(context.Background(), 10*time.Second)
	defer cancel()
	t.f.mu.Lock()
	delete(t.f.tabs, t.context)
	t.f.mu.Unlock()
	t.f.call(ctx, "browser.removeUserContext", map[string]any{"userContext": t.user}, nil)
}
