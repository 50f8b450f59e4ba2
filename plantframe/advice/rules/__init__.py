"""One rule a file, its cases in the YAML file of the same name beside it."""
