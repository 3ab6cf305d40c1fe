// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QProcessEnvironment>
#include <QString>
#include <QStringList>

#include <string>

namespace rw::cli::test {

/// What the program did: its exit code and what it wrote.
struct Outcome {
    int code;
    std::string out;
    std::string err;
};

/// Runs a built program in a process of its own. A crash or a hang is a test failure and code -1.
[[nodiscard]] Outcome run(const QString& program, const QStringList& words, const QByteArray& input = {},
                          const QProcessEnvironment& environment = QProcessEnvironment::systemEnvironment());

/// Runs the built reelwright-cli in a process of its own. A crash is a test failure and code -1.
[[nodiscard]] Outcome cli(const QStringList& words, const QByteArray& input = {});

/// Refused as the program refuses everything: code 2, nothing on standard output, one sentence on standard error.
/// Gives back the sentence, without the program's name.
[[nodiscard]] std::string refusalOf(const QStringList& words, const QByteArray& input = {});

/// Compares with tests/app/golden/NAME. With REELWRIGHT_WRITE_GOLDENS set the file is written instead, and the test
/// fails to say so.
void expectGolden(const char* name, const std::string& text);

} // namespace rw::cli::test
