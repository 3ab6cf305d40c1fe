// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/job_state.h"

#include <gtest/gtest.h>

#include <array>
#include <map>
#include <string>
#include <utility>

using rw::Code;
using rw::JobEventKind;
using rw::JobState;
using rw::stateAfter;

namespace {

constexpr std::array kStates = {JobState::Logged,    JobState::OnTheMachine, JobState::Strung,
                                JobState::Collected, JobState::Waiting,      JobState::Withdrawn};
constexpr std::array kKinds = {JobEventKind::Logged,   JobEventKind::Taken,     JobEventKind::PutDown,
                               JobEventKind::Cut,      JobEventKind::Lost,      JobEventKind::Strung,
                               JobEventKind::Reopened, JobEventKind::Collected, JobEventKind::BroughtBack,
                               JobEventKind::Waiting,  JobEventKind::Resumed,   JobEventKind::Withdrawn};

// The whole table in words; what is not here is refused.
const std::map<std::pair<std::string, std::string>, std::string> kTable = {
    {{"", "logged"}, "logged"},
    {{"logged", "taken"}, "on-the-machine"},
    {{"logged", "waiting"}, "waiting"},
    {{"logged", "withdrawn"}, "withdrawn"},
    {{"on-the-machine", "put-down"}, "logged"},
    {{"on-the-machine", "cut"}, "on-the-machine"},
    {{"on-the-machine", "lost"}, "on-the-machine"},
    {{"on-the-machine", "strung"}, "strung"},
    {{"on-the-machine", "waiting"}, "waiting"},
    {{"on-the-machine", "withdrawn"}, "withdrawn"},
    {{"strung", "reopened"}, "on-the-machine"},
    {{"strung", "collected"}, "collected"},
    {{"collected", "brought-back"}, "strung"},
    {{"waiting", "resumed"}, "logged"},
    {{"waiting", "withdrawn"}, "withdrawn"},
    {{"withdrawn", "resumed"}, "logged"},
};

void expectAsInTable(std::optional<JobState> from, JobEventKind kind) {
    const std::pair key{std::string(from ? rw::jobStateText(*from) : ""), std::string(rw::jobEventKindText(kind))};
    const auto expected = kTable.find(key);
    const auto got = stateAfter(from, kind);
    if (expected == kTable.end()) {
        ASSERT_FALSE(got) << key.first << " + " << key.second;
        EXPECT_EQ(got.error().code(), Code::WrongState);
        EXPECT_EQ(got.error().text("state"), key.first);
    } else {
        ASSERT_TRUE(got) << key.first << " + " << key.second;
        EXPECT_EQ(rw::jobStateText(*got), expected->second);
    }
}

TEST(JobState, FollowsFromEventsAsTheTableSays) {
    for (const JobEventKind kind : kKinds) {
        expectAsInTable(std::nullopt, kind);
        for (const JobState state : kStates) {
            expectAsInTable(state, kind);
        }
    }
}

TEST(JobState, ARefusalSaysWhatWouldHaveDone) {
    EXPECT_EQ(stateAfter(JobState::Logged, JobEventKind::Strung).error().text("wanted"), "on-the-machine");
    EXPECT_EQ(stateAfter(JobState::Strung, JobEventKind::Waiting).error().text("wanted"), "logged, on-the-machine");
}

TEST(JobState, TextsGoBothWays) {
    for (const JobState state : kStates) {
        EXPECT_EQ(rw::jobStateFromText(rw::jobStateText(state)), state);
    }
    for (const JobEventKind kind : kKinds) {
        EXPECT_EQ(rw::jobEventKindFromText(rw::jobEventKindText(kind)), kind);
    }
    EXPECT_EQ(rw::jobStateFromText("Logged"), std::nullopt);
    EXPECT_EQ(rw::jobEventKindFromText(""), std::nullopt);
}

} // namespace
