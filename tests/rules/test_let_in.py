"""Nothing that runs what a file holds, and no way out to the network."""

import ast

from tests.rules import source

#: These turn data into code, or hand text to a shell.
RUNS = {"eval", "exec", "compile", "__import__"}
SHELLS = {"system", "popen", "getoutput", "getstatusoutput"}
CODE_IN_DATA = {"pickle", "cPickle", "marshal", "shelve", "dill", "joblib", "code", "codeop"}
NETWORK = {
    *("socketserver", "http", "urllib", "ftplib", "smtplib", "poplib", "imaplib", "telnetlib"),
    *("xmlrpc", "ssl", "asyncio", "requests", "httpx", "aiohttp", "webbrowser"),
    *("QtNetwork", "QtWebSockets", "QtWebEngineCore", "QtWebEngineWidgets"),
}
#: The name of the machine needs no connection.
NAME_ONLY = {"ultraplanner_gui/store/open_note.py"}


def _modules(path):
    for node in ast.walk(source.tree(path)):
        if isinstance(node, ast.Import):
            yield from (word for alias in node.names for word in alias.name.split("."))
        elif isinstance(node, ast.ImportFrom):
            yield from (node.module or "").split(".")
            if node.module in ("PySide6", "concurrent"):
                yield from (alias.name for alias in node.names)


def _calls(path):
    return [node for node in ast.walk(source.tree(path)) if isinstance(node, ast.Call)]


def _runs_text(call):
    match call.func:
        case ast.Name(id=word):
            return word in RUNS | SHELLS
        case ast.Attribute(value=ast.Name(id="builtins"), attr=word):
            return word in RUNS
        case ast.Attribute(value=ast.Name(id="QLocale"), attr="system"):
            return False
        case ast.Attribute(attr=word):
            return word in SHELLS
    return False


def test_nothing_is_imported_that_takes_data_for_code_or_talks_to_a_network():
    found = [
        f"{source.name(path)} {word}"
        for path in source.modules()
        for word in _modules(path)
        if word in CODE_IN_DATA | NETWORK
        or (word == "socket" and source.name(path) not in NAME_ONLY)
    ]
    assert found == []


def test_the_machine_is_only_asked_for_its_name():
    for name in NAME_ONLY:
        used = {
            node.attr
            for node in ast.walk(source.tree(source.ROOT / name))
            if isinstance(node, ast.Attribute)
            and isinstance(node.value, ast.Name)
            and node.value.id == "socket"
        }
        assert used == {"gethostname"}


def test_no_text_becomes_code_and_no_shell_is_asked():
    found = [
        f"{source.name(path)}:{call.lineno} {source.called_name(call)}"
        for path in source.modules()
        for call in _calls(path)
        if _runs_text(call) or any(word.arg in ("shell", "allow_pickle") for word in call.keywords)
    ]
    assert found == []
