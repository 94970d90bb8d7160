package site

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// each calls a function for every number below n, on as many goroutines as there are cores. Every
// goroutine gets its own function from start.
func each(n int, start func() func(int)) {
	var next atomic.Int64
	var wg sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		wg.Go(func() {
			do := start()
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				do(i)
			}
		})
	}
	wg.Wait()
}
