// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command_line.h"
#include "app/cli/help.h"
#include "ui/text/sentences.h"

#include <QCoreApplication>
#include <QGuiApplication>

#include <algorithm>
#include <cstdio>
#include <memory>
#include <string>
#include <vector>

namespace {
using namespace rw;

void write(std::FILE* stream, const std::string& text) { std::fwrite(text.data(), 1, text.size(), stream); }

/// Qt's own remarks are for whoever works on the program. What a command has to say about its work it says itself, in
/// one sentence, and nothing else may stand beside it.
void quiet(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtFatalMsg || qEnvironmentVariableIsSet("REELWRIGHT_QT_MESSAGES")) {
        write(stderr, qFormatLogMessage(type, context, message).toStdString() + "\n");
    }
}

int refuse(const Refusal& refusal) {
    write(stderr, "reelwright-cli: " + ui::sentenceFor(refusal).toStdString() + "\n");
    return cli::kRefused;
}

std::unique_ptr<QCoreApplication> applicationFor(const cli::CommandLine& line, int& argc, char** argv) {
    if (!line.command->paints(line.given)) {
        return std::make_unique<QCoreApplication>(argc, argv);
    }
    // Fonts are needed, a screen is not: whatever the session's windows run on stays out of it.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return std::make_unique<QGuiApplication>(argc, argv);
}

int run(int argc, char** argv) {
    const std::vector<std::string> words(argv + std::min(argc, 1), argv + argc);
    if (words.empty()) {
        write(stderr, cli::helpText(nullptr));
        return cli::kRefused;
    }
    const auto line = cli::parseCommandLine(words);
    if (!line) {
        return refuse(line.error());
    }
    if (line->help || line->version) {
        write(stdout, line->help ? cli::helpText(line->command) : "reelwright-cli " REELWRIGHT_VERSION "\n");
        return cli::kDone;
    }
    const auto application = applicationFor(*line, argc, argv);
    const auto answer = line->command->run(line->given);
    if (!answer) {
        return refuse(answer.error());
    }
    write(stderr, answer->aside.empty() ? std::string() : "reelwright-cli: " + answer->aside);
    write(stdout, answer->out);
    if (std::fflush(stdout) != 0 || std::ferror(stdout) != 0) {
        refuse(Refusal(Code::FileUnwritable, {{"file", "Standard output"}}));
        return cli::kWorldBroken;
    }
    return answer->exitCode;
}
} // namespace

int main(int argc, char** argv) {
    qInstallMessageHandler(quiet);
    try {
        return run(argc, argv);
    } catch (...) {
        write(stderr, "reelwright-cli: " + ui::sentenceFor(std::current_exception()).toStdString() + "\n");
        return cli::kWorldBroken;
    }
}
