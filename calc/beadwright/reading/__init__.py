"""What is typed: a query taken apart, fields that say what they allow."""
