package engine

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
)

// wire speaks W3C WebDriver over HTTP.
type wire struct{ base string }

type wireError struct {
	Code    string `json:"error"`
	Message string `json:"message"`
}

func (e *wireError) Error() string { return e.Code + ": " + e.Message }

// call sends one command; into may be nil.
func (w wire) call(ctx context.Context, method, path string, body, into any) error {
	var in io.Reader
	if method == http.MethodPost {
		if body == nil {
			body = struct{}{}
		}
		data, err := json.Marshal(body)
		if err != nil {
			return err
		}
		in = bytes.NewReader(data)
	}
	req, err := http.NewRequestWithContext(ctx, method, w.base+path, in)
	if err != nil {
		return err
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		return err
	}
	defer resp.Body.Close()
	var out struct{ Value json.RawMessage }
	if err := json.NewDecoder(resp.Body).Decode(&out); err != nil {
		return fmt.Errorf("%s %s: %w", method, path, err)
	}
	if resp.StatusCode != http.StatusOK {
		e := new(wireError)
		if json.Unmarshal(out.Value, e) != nil || e.Code == "" {
			return fmt.Errorf("%s %s: %s %s", method, path, resp.Status, out.Value)
		}
		return e
	}
	if into == nil {
		return nil
	}
	return json.Unmarshal(out.Value, into)
}

// pointer gives steps the shape that WebDriver and WebDriver BiDi share.
func pointer(kind Kind, steps []Step) []any {
	var list []any
	for _, s := range steps {
		switch s.Do {
		case To:
			list = append(list, map[string]any{"type": To, "x": s.X, "y": s.Y, "duration": 0})
		case Wait:
			list = append(list, map[string]any{"type": Wait, "duration": s.Wait.Milliseconds()})
		default:
			list = append(list, map[string]any{"type": s.Do, "button": 0})
		}
	}
	return []any{map[string]any{
		"type": "pointer", "id": string(kind), "parameters": map[string]any{"pointerType": kind}, "actions": list,
	}}
}

// keystrokes gives text the shape that both share.
func keystrokes(text string) []any {
	var list []any
	for _, r := range text {
		for _, do := range []string{"keyDown", "keyUp"} {
			list = append(list, map[string]any{"type": do, "value": string(r)})
		}
	}
	return []any{map[string]any{"type": "key", "id": "keys", "actions": list}}
}
