"""What a running program needs: document, selection, jobs, settings, resources."""
