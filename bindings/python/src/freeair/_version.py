# SPDX-License-Identifier: MIT
# Written by bindings/generate; do not edit.
VERSION = "0.1.0"
VERSION_NUMBER = 100
