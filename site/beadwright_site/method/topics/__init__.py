"""One module a topic, each with a function ``sections``; ``method.contents`` lists them."""
