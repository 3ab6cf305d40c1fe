#!/usr/bin/python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""A racket's way from the counter through the bench to its owner, as somebody works who hears the program: fields and
lists are found by their accessible names and roles, what happened is read the same way, and keys go where the keyboard
is. It brings a screen of its own, which nobody sees, and a bus of its own.

usage: by_accessible_names.py PROGRAM FOLDER
PROGRAM is opened on its invented shop; FOLDER is made anew and holds its settings and its ledger.
"""

import ctypes
import os
import re
import shutil
import subprocess
import sys
import time

import pyatspi
from gi.repository import GLib

PATIENCE = 30  # seconds; what is waited for is usually there at once
ENTER, F2, F5, F8 = 0xFF0D, 0xFFBF, 0xFFC2, 0xFFC5  # as X names its keys (keysymdef.h)


def wait_for(look, what):
    """What `look` gives once it gives something. A part of the window may go while it is looked at."""
    until = time.monotonic() + PATIENCE
    while time.monotonic() < until:
        try:
            found = look()
        except (AttributeError, GLib.Error, LookupError, NotImplementedError, TypeError):
            found = None  # it is not there, or no more
        if found:
            return found
        time.sleep(0.1)
    raise SystemExit(f"never came: {what}")


class Window:
    """The program's window, by names and roles."""

    def program(self):
        return next((each for each in pyatspi.Registry.getDesktop(0) if each and each.name == "reelwright"), None)

    def find(self, role, name):
        waiting = [self.program()]
        while waiting:
            part = waiting.pop()
            if part is None:
                continue
            if part.getRoleName() == role and part.name == name and part.getState().contains(pyatspi.STATE_SHOWING):
                return part
            waiting.extend(part[i] for i in range(part.childCount))
        return None

    def said(self, name, role="label"):
        part = self.find(role, name)
        return part.description if part else ""

    def text(self, name):
        part = self.find("text", name)
        return part.queryText().getText(0, -1) if part else ""

    def has_keyboard(self, name):
        part = self.find("text", name)
        return part is not None and part.getState().contains(pyatspi.STATE_FOCUSED)

    def is_open(self, name):
        part = self.find("combo box", name)
        return any(each.getRoleName() == "list" and each.getState().contains(pyatspi.STATE_FOCUSED) for each in part)

    def chosen_in(self, name):
        items = (each for each in self.find("list", name) if each.getState().contains(pyatspi.STATE_SELECTED))
        return next((each.name for each in items), "")

    def push(self, name):
        action = wait_for(lambda: self.find("push button", name), f"the button “{name}”").queryAction()
        action.doAction(next(i for i in range(action.nActions) if action.getName(i) == "Press"))

    def hears(self, words):
        return wait_for(lambda: re.search(words, self.said("What happened")), f"“{words}” as what happened")


def press(key):
    pyatspi.Registry.generateKeyboardEvent(key, None, pyatspi.KEY_SYM)


def type_in(text):
    for letter in text:
        press(ord(letter))


def give_keyboard():
    """What a window manager does for a window that was just opened; there is none on a bare X server."""
    x = ctypes.CDLL("libX11.so.6")
    x.XOpenDisplay.restype = ctypes.c_void_p
    x.XDefaultRootWindow.restype = ctypes.c_ulong
    ignore = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_void_p)(lambda display, error: 0)
    x.XSetErrorHandler(ignore)  # windows that are not in view take no keyboard
    display = ctypes.c_void_p(x.XOpenDisplay(None))
    root, parent, count = ctypes.c_ulong(), ctypes.c_ulong(), ctypes.c_uint()
    children = ctypes.POINTER(ctypes.c_ulong)()
    x.XQueryTree(display, ctypes.c_ulong(x.XDefaultRootWindow(display)), ctypes.byref(root), ctypes.byref(parent),
                 ctypes.byref(children), ctypes.byref(count))
    for i in range(count.value):
        x.XSetInputFocus(display, ctypes.c_ulong(children[i]), 2, 0)  # 2: RevertToParent, 0: CurrentTime
        x.XSync(display, 0)
    x.XCloseDisplay(display)


def take_in(window):
    """Petra's racket, strung as last time; gives the number on its tag."""
    press(F2)
    wait_for(lambda: window.is_open("Who is working"), "the names of who may be working")
    press(ENTER)
    wait_for(lambda: window.has_keyboard("Person"), "the keyboard at the person")
    type_in("417")
    press(ENTER)
    wait_for(lambda: window.text("Person") == "Petra Lindobi", "Petra Lindobi")
    wait_for(lambda: window.has_keyboard("Racket"), "the keyboard at the racket")
    press(ENTER)
    wait_for(lambda: window.text("Racket").startswith("Aldermoor 98"), "her racket")
    press(F5)
    wait_for(lambda: window.text("Tension of the mains"), "the tensions of last time")
    wait_for(lambda: window.said("Price") and window.said("Promise"), "a price and a promise")
    window.push("Log it")
    return window.hears(r"Logged (\d+)").group(1)


def string_it(window, number):
    window.push("Bench")
    wait_for(lambda: window.find("list", "What is next").getState().contains(pyatspi.STATE_FOCUSED), "the bench")
    type_in(number)
    press(ENTER)
    wait_for(lambda: number in window.said("Job card", "filler"), f"the card of {number}")
    wait_for(lambda: "Enter" in window.said("What comes next"), "what comes next")
    while "on the machine" not in window.said("Job card", "filler"):
        before = window.said("What comes next") + window.said("What happened")
        press(ord("t"))  # where another racket lies there it is asked once whether that is meant
        wait_for(lambda: window.said("What comes next") + window.said("What happened") != before, "an answer to T")
        wait_for(lambda: window.said("Job card", "filler"), "the card")
    while "strung" not in wait_for(lambda: window.said("What comes next"), "what comes next"):
        press(ord("c"))
        wait_for(lambda: window.has_keyboard("Length that is cut"), "the length of a cut")
        press(ENTER)
        wait_for(lambda: window.find("text", "Length that is cut") is None, "the cut")
    press(ord("f"))
    wait_for(lambda: window.has_keyboard("Mains as strung"), "the finish")
    press(ENTER)
    window.hears(rf"{number}.*strung")


def hand_over(window, number):
    window.push("Counter")
    wait_for(lambda: window.has_keyboard("Person"), "the counter")
    press(F8)
    wait_for(lambda: window.find("list", "The rack").getState().contains(pyatspi.STATE_FOCUSED), "the rack")
    type_in(number)
    press(ENTER)
    wait_for(lambda: window.chosen_in("The rack").startswith(number), f"{number} on the rack")
    press(ENTER)
    wait_for(lambda: window.has_keyboard("Paid now"), "what is paid")
    press(ENTER)
    window.hears(rf"Handed over {number}")


def story(program, folder):
    environment = dict(os.environ, QT_QPA_PLATFORM="xcb", QT_LINUX_ACCESSIBILITY_ALWAYS_ON="1", HOME=folder,
                       XDG_CONFIG_HOME=folder, XDG_DATA_HOME=folder)
    with subprocess.Popen([program, "--demo"], env=environment) as running:
        try:
            window = Window()
            wait_for(lambda: window.find("frame", "Reelwright"), "the window")
            wait_for(lambda: window.find("text", "Person"), "the counter")
            give_keyboard()
            wait_for(lambda: window.has_keyboard("Person"), "the keyboard")
            number = take_in(window)
            string_it(window, number)
            hand_over(window, number)
            print(f"{number} was taken in, strung and handed over")
        finally:
            running.terminate()


def with_screen_and_bus(arguments):
    """The same again beside a screen and a session bus; gives how it ended."""
    told, tells = os.pipe()
    # Without -noreset the server begins anew, and turns people away meanwhile, whenever its last window has gone.
    with subprocess.Popen(["Xvfb", "-displayfd", str(tells), "-screen", "0", "1280x800x24", "-nolisten", "tcp",
                           "-noreset"], pass_fds=[tells], stderr=subprocess.DEVNULL) as screen:
        try:
            os.close(tells)
            with os.fdopen(told) as display:
                environment = dict(os.environ, DISPLAY=":" + display.readline().strip(), **{INSIDE: "1"})
            return subprocess.call(["dbus-run-session", "--", sys.executable, __file__, *arguments], env=environment)
        finally:
            screen.terminate()


INSIDE = "REELWRIGHT_HAS_SCREEN_AND_BUS"
if os.environ.get(INSIDE):
    story(*sys.argv[1:])
else:
    shutil.rmtree(sys.argv[2], ignore_errors=True)
    os.makedirs(sys.argv[2])
    sys.exit(with_screen_and_bus(sys.argv[1:]))
