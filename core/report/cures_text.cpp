// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cures_text.h"

#include <fmt/format.h>

#include <cmath>

#include "core/report/translated.h"
#include "core/report/words.h"

namespace howlmap::report {
namespace {
constexpr std::size_t kColumns = 96;

/// Text broken at spaces into lines that begin with an indent.
std::string wrapped(const std::string& text, std::size_t indent) {
    std::string all, line;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t to = std::min(text.find(' ', from), text.size());
        const std::string word = text.substr(from, to - from);
        if (!line.empty() && indent + line.size() + 1 + word.size() > kColumns) {
            all += std::string(indent, ' ') + line + "\n";
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
        from = to + 1;
    }
    return line.empty() ? all : all + std::string(indent, ' ') + line + "\n";
}

std::string gain_words(const std::optional<double>& db) {
    if (!db) return t("no loop left");
    const double tenths = std::round(*db * 10.0) / 10.0;
    return localised("{:+.1f} dB", tenths == 0.0 ? 0.0 : tenths);  // never -0.0
}

std::string figures(const Cure& cure) {
    std::string text = f("to count on {}, as drawn {}, tone {:.1f} dB", gain_words(cure.count_on_gain_db),
                         gain_words(cure.margin_gain_db), cure.tone_cost_db);
    if (cure.worst_after)
        text += f("; the first to ring is then {} ({})", hz_words(cure.worst_after->hz), cure.worst_after->note);
    return text;
}

std::string cure_words(std::size_t number, const Cure& cure) {
    std::string text = wrapped(fmt::format("{}. {}", number, cure.instruction), 2);
    text += wrapped(figures(cure), 5);
    if (!cure.buys.empty()) text += wrapped(cure.buys, 5);
    if (!cure.loses.empty()) text += wrapped(t("What is lost: ") + cure.loses, 5);
    if (!cure.caution.empty()) text += wrapped(t("Caution: ") + cure.caution, 5);
    return text;
}

std::string plan_words(const CureReport& report) {
    const Plan& plan = report.plan;
    std::string text;
    for (std::size_t i = 0; i < plan.steps.size(); ++i) text += cure_words(i + 1, plan.steps[i]);
    if (!plan.steps.empty())
        text += wrapped(f("After that: count on {}, as drawn {}; the target is {:g} dB.",
                          margin_words(plan.after.margin_p05_db), margin_words(plan.after.margin_db), report.target_db),
                        2);
    if (!plan.reason.empty()) text += wrapped(plan.reason, 2);
    return text;
}
}  // namespace

std::string cures_text(const CureReport& report) {
    std::string text =
        f("Now: count on {}, as drawn {}; the target is {:g} dB.", margin_words(report.before.margin_p05_db),
          margin_words(report.before.margin_db), report.target_db) +
        "\n";
    text += "\n" + t("The plan, cheapest that was found:") + "\n" + plan_words(report);
    if (report.cures.empty()) return text;
    text += "\n" + t("Each on its own, best first (always at the same level at the ears):") + "\n";
    for (std::size_t i = 0; i < report.cures.size(); ++i) text += cure_words(i + 1, report.cures[i]);
    return text;
}

}  // namespace howlmap::report
