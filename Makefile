# `make` builds dist/ and needs Go alone. What each target does: see DEVELOPERS.md.
GO ?= go
# The race detector needs a C compiler; without one the tests run without it and say so.
RACE := $(if $(shell command -v cc || command -v gcc || command -v clang),-race)
NODE_STAMP := site-src/node_modules/.package-lock.json
PRETTIER := site-src/node_modules/.bin/prettier --log-level warn
FORMATTED := '*.md' 'LICENSES/*.md' 'rules-content/**/*.{md,json}' 'site-src/**/*.{ts,mjs,css,html,md}' site-src/strings/*.json

.PHONY: build serve test lint format types bench screenshots faults tools node
# Of two package managers at once, one fails.
.NOTPARALLEL:

build:
	$(GO) run ./generator build

serve:
	$(GO) run ./generator serve

test: tools lint types
	@test -n "$(RACE)" || echo "no C compiler: the tests run without the race detector"
	$(GO) test $(RACE) -timeout 90m ./...

lint: node $(NODE_STAMP)
	@files=$$(gofmt -l generator); test -z "$$files" || { echo "gofmt would change:"; echo "$$files"; exit 1; }
	$(GO) vet ./...
	@$(PRETTIER) --check $(FORMATTED) || { echo "make format writes them so"; exit 1; }
	@sh -n .ci/run && sh -n .ci/tools

format: node $(NODE_STAMP)
	gofmt -w generator
	$(PRETTIER) --write $(FORMATTED)

# The type check and the unit tests of the browser's sources. Node is used for nothing else.
types: node $(NODE_STAMP)
	cd site-src && npm test --silent

$(NODE_STAMP): site-src/package.json site-src/package-lock.json | node
	cd site-src && npm ci --no-audit --no-fund --silent
	@touch $@

# The pictures of the app that the manifest names, taken of the site as it is now.
screenshots:
	SCREENSHOTS=1 $(GO) test -count=1 -run '^TestScreenshots$$' ./generator/internal/e2e

# One table; STAGES names some, such as STAGES="engine bytes".
bench:
	@GO="$(GO)" $(GO) run ./generator/internal/bench/cmd $(STAGES)

# Every file of a version with every fault of a host: about an hour. Counts are printed.
faults:
	FAULTS=all $(GO) test -v -timeout 4h -run 'Faults$$|Version|BackToOlder|Stale|TwoTabs|NoRoom|Interrupted|EarlierWorker|SignIn|StartWithout|PartAgain' ./generator/internal/e2e

# Installs Chromium, Firefox, WebKitGTK, Xvfb and Node from the system's packages where none is found.
tools:
	@sh .ci/tools

# Node alone, and whether it is new enough.
node:
	@sh .ci/tools node
