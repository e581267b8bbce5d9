"""The frame: header, storeys, ledger, actions, questions to the user."""
