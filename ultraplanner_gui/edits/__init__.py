"""One frozen value per user action: Project -> Project."""
