// Package deps holds the modules until the stages import them.
package deps

import (
	_ "github.com/chromedp/cdproto/page"
	_ "github.com/chromedp/chromedp"
	_ "github.com/evanw/esbuild/pkg/api"
	_ "github.com/tdewolff/minify/v2"
	_ "github.com/tdewolff/minify/v2/html"
	_ "github.com/tdewolff/minify/v2/json"
	_ "github.com/tdewolff/minify/v2/svg"
	_ "github.com/yuin/goldmark"
)
