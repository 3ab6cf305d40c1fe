// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/jobs/job_state.h"

#include "core/base/named_texts.h"

#include <string>
#include <vector>

namespace rw {

namespace {
using Kind = JobEventKind;
using State = JobState;

constexpr NamedTexts<State, 6> kStates({{{State::Logged, "logged"},
                                         {State::OnTheMachine, "on-the-machine"},
                                         {State::Strung, "strung"},
                                         {State::Collected, "collected"},
                                         {State::Waiting, "waiting"},
                                         {State::Withdrawn, "withdrawn"}}});

constexpr NamedTexts<Kind, 12> kKinds({{{Kind::Logged, "logged"},
                                        {Kind::Taken, "taken"},
                                        {Kind::PutDown, "put-down"},
                                        {Kind::Cut, "cut"},
                                        {Kind::Lost, "lost"},
                                        {Kind::Strung, "strung"},
                                        {Kind::Reopened, "reopened"},
                                        {Kind::Collected, "collected"},
                                        {Kind::BroughtBack, "brought-back"},
                                        {Kind::Waiting, "waiting"},
                                        {Kind::Resumed, "resumed"},
                                        {Kind::Withdrawn, "withdrawn"}}});

struct Step {
    std::optional<State> from;
    Kind kind;
    State to;
};

constexpr std::array<Step, 16> kSteps = {{
    {std::nullopt, Kind::Logged, State::Logged},
    {State::Logged, Kind::Taken, State::OnTheMachine},
    {State::OnTheMachine, Kind::PutDown, State::Logged},
    {State::OnTheMachine, Kind::Cut, State::OnTheMachine},
    {State::OnTheMachine, Kind::Lost, State::OnTheMachine},
    {State::OnTheMachine, Kind::Strung, State::Strung},
    {State::Strung, Kind::Reopened, State::OnTheMachine},
    {State::Strung, Kind::Collected, State::Collected},
    {State::Collected, Kind::BroughtBack, State::Strung},
    {State::Logged, Kind::Waiting, State::Waiting},
    {State::OnTheMachine, Kind::Waiting, State::Waiting},
    {State::Waiting, Kind::Resumed, State::Logged},
    {State::Withdrawn, Kind::Resumed, State::Logged},
    {State::Logged, Kind::Withdrawn, State::Withdrawn},
    {State::Waiting, Kind::Withdrawn, State::Withdrawn},
    {State::OnTheMachine, Kind::Withdrawn, State::Withdrawn},
}};

/// The states in which `kind` may happen, as ui/text takes them: "logged, waiting".
std::string statesThatAllow(Kind kind) {
    std::string states;
    for (const Step& step : kSteps) {
        if (step.kind == kind && step.from) {
            states += (states.empty() ? "" : ", ") + std::string(jobStateText(*step.from));
        }
    }
    return states;
}
} // namespace

std::string_view jobStateText(JobState state) { return kStates.text(state); }
std::optional<JobState> jobStateFromText(std::string_view text) { return kStates.value(text); }
std::string_view jobEventKindText(JobEventKind kind) { return kKinds.text(kind); }
std::optional<JobEventKind> jobEventKindFromText(std::string_view text) { return kKinds.value(text); }

Result<JobState> stateAfter(std::optional<JobState> state, JobEventKind kind) {
    for (const Step& step : kSteps) {
        if (step.from == state && step.kind == kind) {
            return step.to;
        }
    }
    return refuse(Code::WrongState, {{"state", state ? std::string(jobStateText(*state)) : std::string()},
                                     {"wanted", statesThatAllow(kind)}});
}

} // namespace rw
