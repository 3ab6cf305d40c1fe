// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli.h"

#include <QFile>
#include <QProcess>

#include <gtest/gtest.h>

#include <algorithm>

namespace rw::cli::test {

Outcome run(const QString& program, const QStringList& words, const QByteArray& input,
            const QProcessEnvironment& environment) {
    QProcess process;
    process.setProcessEnvironment(environment);
    process.start(program, words);
    process.write(input);
    process.closeWriteChannel();
    constexpr int kPatience = 60000; // a hang should fail this test, not the whole run
    if (!process.waitForFinished(kPatience) || process.exitStatus() != QProcess::NormalExit) {
        ADD_FAILURE() << program.toStdString() << " did not end well: " << process.errorString().toStdString();
        return {-1, {}, process.readAllStandardError().toStdString()};
    }
    return {process.exitCode(), process.readAllStandardOutput().toStdString(),
            process.readAllStandardError().toStdString()};
}

Outcome cli(const QStringList& words, const QByteArray& input) {
    return run(QStringLiteral(CLI_PROGRAM), words, input);
}

std::string refusalOf(const QStringList& words, const QByteArray& input) {
    SCOPED_TRACE(words.join(QLatin1Char(' ')).left(300).toStdString());
    const Outcome run = cli(words, input);
    EXPECT_EQ(run.code, 2);
    EXPECT_EQ(run.out, "");
    const std::string name = "reelwright-cli: ";
    EXPECT_TRUE(run.err.starts_with(name)) << run.err;
    EXPECT_TRUE(run.err.ends_with(".\n")) << run.err;
    EXPECT_EQ(std::ranges::count(run.err, '\n'), 1) << run.err;
    return run.err.size() > name.size() ? run.err.substr(name.size(), run.err.size() - name.size() - 1) : std::string();
}

void expectGolden(const char* name, const std::string& text) {
    QFile file(QStringLiteral(GOLDEN_FOLDER "/") + QString::fromUtf8(name));
    if (qEnvironmentVariableIsSet("REELWRIGHT_WRITE_GOLDENS")) {
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(text));
        FAIL() << name << " was written: look at it, and run again without REELWRIGHT_WRITE_GOLDENS";
    }
    ASSERT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    EXPECT_EQ(text, file.readAll().toStdString());
}

} // namespace rw::cli::test
