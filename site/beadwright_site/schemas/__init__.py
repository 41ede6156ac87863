"""JSON Schemas of what each page asks and answers, published for programs."""
