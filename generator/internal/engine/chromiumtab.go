package engine

import (
	"bytes"
	"context"
	"encoding/json"
	"image"
	"image/png"
	"math"
	"slices"
	"strings"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/network"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

func (s *chromiumTab) Open(ctx context.Context, address string) error {
	return s.send(ctx, func(ctx context.Context) error { return chromedp.Do(ctx, chromedp.Navigate(address)) })
}

func (s *chromiumTab) Reload(ctx context.Context) error {
	return s.send(ctx, func(ctx context.Context) error { return chromedp.Do(ctx, chromedp.Reload()) })
}

func (s *chromiumTab) Eval(ctx context.Context, expression string) (v json.RawMessage, err error) {
	err = s.send(ctx, func(ctx context.Context) error {
		got, err := chromedp.Run(ctx, chromedp.Evaluate[string](wrapped(expression), chromedp.EvalAwaitPromise))
		v = json.RawMessage(got)
		return err
	})
	return v, err
}

// Point sends what a touch screen or a mouse sends, so that gestures, their selections and menus
// are those of a finger.
func (s *chromiumTab) Point(ctx context.Context, kind Kind, steps []Step) error {
	return s.send(ctx, func(ctx context.Context) error {
		for _, step := range steps {
			if step.Do == Wait {
				select {
				case <-time.After(step.Wait):
				case <-ctx.Done():
					return ctx.Err()
				}
				continue
			}
			if step.Do == To {
				s.toX, s.toY = step.X, step.Y
			} else {
				s.down = step.Do == Down
			}
			var err error
			if kind == Touch {
				err = touch(ctx, step.Do, s.down, s.toX, s.toY)
			} else {
				err = s.mouse(ctx, step.Do, s.down, s.toX, s.toY)
			}
			if err != nil {
				return err
			}
		}
		return nil
	})
}

func touch(ctx context.Context, do Do, down bool, x, y float64) error {
	e := input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchEnd, TouchPoints: []*input.TouchPoint{}}
	if down {
		e.TouchPoints = append(e.TouchPoints, &input.TouchPoint{X: x, Y: y})
	}
	switch {
	case do == Down:
		e.Type = input.DispatchTouchEventTypeTouchStart
	case do == To && down:
		e.Type = input.DispatchTouchEventTypeTouchMove
	case do == To:
		return nil // a finger in the air
	}
	_, err := chromedp.Call(ctx, input.DispatchTouchEvent, e)
	return err
}

// mouse counts presses as a system does: two in one place within half a second are a double click.
func (s *chromiumTab) mouse(ctx context.Context, do Do, down bool, x, y float64) error {
	if do == Down {
		if s.press++; time.Since(s.at) > time.Second/2 || math.Hypot(x-s.x, y-s.y) > 4 {
			s.press = 1
		}
		s.x, s.y, s.at = x, y, time.Now()
	}
	e := input.DispatchMouseEventParams{Type: input.DispatchMouseEventTypeMouseMoved, X: x, Y: y}
	if do != To {
		e.Button, e.ClickCount = input.MouseButtonLeft, s.press
	}
	switch do {
	case Down:
		e.Type = input.DispatchMouseEventTypeMousePressed
	case Up:
		e.Type = input.DispatchMouseEventTypeMouseReleased
	}
	if down {
		e.Button, e.Buttons = input.MouseButtonLeft, 1
	}
	_, err := chromedp.Call(ctx, input.DispatchMouseEvent, e)
	return err
}

var keyNames = strings.NewReplacer(
	KeyEnter, kb.Enter, KeyEscape, kb.Escape, KeyTab, kb.Tab, KeyBackspace, kb.Backspace, KeyHome, kb.Home, KeyEnd, kb.End,
	KeyLeft, kb.ArrowLeft, KeyUp, kb.ArrowUp, KeyRight, kb.ArrowRight, KeyDown, kb.ArrowDown,
)

func (s *chromiumTab) Type(ctx context.Context, text string) error {
	return s.send(ctx, func(ctx context.Context) error {
		return chromedp.Do(ctx, chromedp.KeyEvent(keyNames.Replace(text)))
	})
}

func (s *chromiumTab) Screenshot(ctx context.Context) (im image.Image, err error) {
	err = s.send(ctx, func(ctx context.Context) error {
		got, err := chromedp.Call(ctx, cdppage.CaptureScreenshot, cdppage.CaptureScreenshotParams{})
		if err != nil {
			return err
		}
		im, err = png.Decode(bytes.NewReader(got.Data))
		return err
	})
	return im, err
}

func (s *chromiumTab) Resize(ctx context.Context, width, height int) error {
	return s.send(ctx, func(ctx context.Context) error {
		return chromedp.Do(ctx, chromedp.EmulateViewport(int64(width), int64(height), chromedp.EmulateScale(Scale)))
	})
}

func (s *chromiumTab) Offline(ctx context.Context, off bool) error {
	return s.send(ctx, func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
			MatchedNetworkConditions: []*network.Conditions{{Offline: off, DownloadThroughput: -1, UploadThroughput: -1}},
		})
		if err != nil {
			return err
		}
		_, err = chromedp.Call(ctx, network.OverrideNetworkState, network.OverrideNetworkStateParams{Offline: off, DownloadThroughput: -1, UploadThroughput: -1})
		return err
	})
}

func (s *chromiumTab) Media(ctx context.Context, m Media) error {
	var p emulation.SetEmulatedMediaParams
	if m.Print {
		p.Media = "print"
	}
	if m.Forced {
		p.Features = []*emulation.MediaFeature{{Name: "forced-colors", Value: "active"}}
	}
	return s.send(ctx, func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, p)
		return err
	})
}

func (s *chromiumTab) Print(ctx context.Context) (pdf []byte, err error) {
	yes := true
	err = s.send(ctx, func(ctx context.Context) error {
		got, err := chromedp.Call(ctx, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PreferCSSPageSize: &yes})
		pdf = got.Data
		return err
	})
	return pdf, err
}

func (s *chromiumTab) Trouble() ([]string, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return slices.Clone(s.trouble), nil
}

func (s *chromiumTab) Close() { s.cancel() }
