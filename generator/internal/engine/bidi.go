package engine

import (
	"context"
	"encoding/json"
	"fmt"
	"sync"

	"github.com/coder/websocket"
)

// bidi speaks W3C WebDriver BiDi over a web socket.
type bidi struct {
	conn *websocket.Conn
	done chan struct{} // closed when the browser has gone

	mu      sync.Mutex
	last    int
	waiting map[int]chan bidiAnswer
	event   func(method string, params json.RawMessage)
}

type bidiAnswer struct {
	ID             int
	Type           string
	Method         string
	Params, Result json.RawMessage
	Error, Message string
}

// dialBidi connects; event hears of all that the browser tells by itself.
func dialBidi(ctx context.Context, address string, event func(string, json.RawMessage)) (*bidi, error) {
	conn, _, err := websocket.Dial(ctx, address, nil)
	if err != nil {
		return nil, err
	}
	conn.SetReadLimit(-1) // pictures are large
	b := &bidi{conn: conn, done: make(chan struct{}), waiting: map[int]chan bidiAnswer{}, event: event}
	go b.read()
	return b, nil
}

func (b *bidi) read() {
	defer close(b.done)
	for {
		_, data, err := b.conn.Read(context.Background())
		if err != nil {
			return
		}
		var a bidiAnswer
		if json.Unmarshal(data, &a) != nil {
			continue
		}
		if a.Type == "event" {
			b.event(a.Method, a.Params)
			continue
		}
		b.mu.Lock()
		c := b.waiting[a.ID]
		delete(b.waiting, a.ID)
		b.mu.Unlock()
		if c != nil {
			c <- a
		}
	}
}

// call sends one command; into may be nil.
func (b *bidi) call(ctx context.Context, method string, params, into any) error {
	if params == nil {
		params = struct{}{}
	}
	c := make(chan bidiAnswer, 1)
	b.mu.Lock()
	b.last++
	id := b.last
	b.waiting[id] = c
	b.mu.Unlock()
	data, err := json.Marshal(map[string]any{"id": id, "method": method, "params": params})
	if err != nil {
		return err
	}
	if err := b.conn.Write(ctx, websocket.MessageText, data); err != nil {
		return err
	}
	select {
	case a := <-c:
		if a.Type != "success" {
			return fmt.Errorf("%s: %w", method, &wireError{a.Error, a.Message})
		}
		if into == nil {
			return nil
		}
		return json.Unmarshal(a.Result, into)
	case <-ctx.Done():
		return fmt.Errorf("%s: %w", method, ctx.Err())
	case <-b.done:
		return fmt.Errorf("%s: the browser has gone", method)
	}
}
