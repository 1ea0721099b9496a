// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/cures/cure_text.h"

#include <QCoreApplication>

#include "app/panels/cures/setting_tables.h"
#include "app/settings/figures.h"
#include "core/listening/send_model.h"

namespace howlmap::app {
namespace {

QString text(const char* english) { return QCoreApplication::translate("cures", english); }

const char* kind_name(CureKind kind) {
    switch (kind) {
        case CureKind::aim_microphone:
            return QT_TRANSLATE_NOOP("cures", "Aim the microphone");
        case CureKind::move_microphone:
            return QT_TRANSLATE_NOOP("cures", "Move the microphone");
        case CureKind::closer_to_source:
            return QT_TRANSLATE_NOOP("cures", "Closer to the source");
        case CureKind::change_pattern:
            return QT_TRANSLATE_NOOP("cures", "Another pattern");
        case CureKind::move_loudspeaker:
            return QT_TRANSLATE_NOOP("cures", "Move the loudspeaker");
        case CureKind::aim_loudspeaker:
            return QT_TRANSLATE_NOOP("cures", "Aim the loudspeaker");
        case CureKind::graphic_bands:
            return QT_TRANSLATE_NOOP("cures", "Pull bands");
        case CureKind::narrow_notches:
            return QT_TRANSLATE_NOOP("cures", "Narrow notches");
        case CureKind::high_pass:
            return QT_TRANSLATE_NOOP("cures", "High-pass");
        case CureKind::input_polarity:
            return QT_TRANSLATE_NOOP("cures", "Turn polarity");
        case CureKind::mix_polarity:
            return QT_TRANSLATE_NOOP("cures", "Turn polarity of the mix");
        case CureKind::cover_sound_holes:
            return QT_TRANSLATE_NOOP("cures", "Cover the sound holes");
        case CureKind::remove_send:
            return QT_TRANSLATE_NOOP("cures", "Take out of the mix");
        case CureKind::in_ears:
            return QT_TRANSLATE_NOOP("cures", "In-ears");
        case CureKind::turn_down:
            return QT_TRANSLATE_NOOP("cures", "Turn down");
    }
    return "";
}

QString paragraph(const std::string& words) {
    return words.empty() ? QString()
                         : QStringLiteral("<p style=\"margin:2px 0\">%1</p>").arg(qstr(words).toHtmlEscaped());
}

/// What to do; more settings than a sentence can hold as tables.
QString instruction(const Show& from, const Cure& cure) {
    constexpr std::size_t kSendsInWords = 4;
    const bool bands = cure.kind == CureKind::graphic_bands;
    const bool many = cure.kind != CureKind::turn_down && send_changes(from, cure.after).size() > kSendsInWords;
    if (!bands && !many) return qstr(cure.instruction).toHtmlEscaped();
    const QString words = bands ? text(QT_TRANSLATE_NOOP("cures", "Set the graphic equalisers as listed, in dB."))
                                : qstr(cure.change.name);
    return words.toHtmlEscaped() + QStringLiteral("<br>") + setting_tables(from, cure.after);
}

QString row(const QString& what, const QString& before, const QString& after) {
    return QStringLiteral(
               "<tr><td>%1&nbsp;&nbsp;</td><td align=\"right\">%2&nbsp;&nbsp;</td><td "
               "align=\"right\"><b>%3</b></td></tr>")
        .arg(what, before, after);
}

}  // namespace

QString kind_text(CureKind kind) { return text(kind_name(kind)); }

QString gained_text(std::optional<double> gain_db, std::optional<double> margin_after_db) {
    if (!margin_after_db) return margin_text(margin_after_db);
    return gain_db ? gain_text(*gain_db) : QStringLiteral("–");
}

QString cure_title(const Show& show, const Cure& cure) {
    if (cure.kind == CureKind::move_microphone && cure.objects.size() > 1)  // a pickup goes where its player goes
        return QStringLiteral("%1: %2").arg(text(QT_TRANSLATE_NOOP("cures", "Stand elsewhere")),
                                            name_text(show, cure.objects.back()));
    const QString kind = kind_text(cure.kind);
    if (cure.objects.empty()) return kind;
    QString whose = name_text(show, cure.objects.front());
    const bool several = cure.kind == CureKind::turn_down || cure.kind == CureKind::graphic_bands ||
                         cure.kind == CureKind::narrow_notches;
    if (several && cure.objects.size() > 1)
        whose = text(QT_TRANSLATE_NOOP("cures", "%1 and %2 more")).arg(whose).arg(cure.objects.size() - 1);
    return QStringLiteral("%1: %2").arg(kind, whose);
}

QString cure_words(const Show& from, const Cure& cure) {
    return QStringLiteral("<div style=\"margin:2px 0\"><b>%1</b></div>").arg(instruction(from, cure)) +
           paragraph(cure.buys) + paragraph(cure.loses) + paragraph(cure.caution);
}

QString cure_figures(const Margins& before, const Cure& cure) {
    QString rows = row({}, text(QT_TRANSLATE_NOOP("cures", "now")), text(QT_TRANSLATE_NOOP("cures", "then")));
    rows += row(text(QT_TRANSLATE_NOOP("cures", "Margin to count on")), margin_text(before.margin_p05_db),
                margin_text(cure.margins_after.margin_p05_db));
    rows += row(text(QT_TRANSLATE_NOOP("cures", "Margin as drawn")), margin_text(before.margin_db),
                margin_text(cure.margins_after.margin_db));
    rows += row(text(QT_TRANSLATE_NOOP("cures", "Change of tone")), {}, gain_text(cure.tone_cost_db));
    rows += row(text(QT_TRANSLATE_NOOP("cures", "Change of loudness")), {}, gain_text(cure.loudness_change_db));
    const QString ring = cure.worst_after
                             ? QStringLiteral("%1 %2").arg(hz_text(cure.worst_after->hz), qstr(cure.worst_after->note))
                             : text(QT_TRANSLATE_NOOP("cures", "nothing"));
    rows += row(text(QT_TRANSLATE_NOOP("cures", "Rings first")), {}, ring);
    return QStringLiteral("<table>%1</table>").arg(rows);
}

QString plan_words(const Show& from, const CureReport& report) {
    const Plan& plan = report.plan;
    if (plan.steps.empty())
        return paragraph(
            plan.reason.empty()
                ? text(QT_TRANSLATE_NOOP("cures", "The target is reached: no plan is needed.")).toStdString()
                : plan.reason);
    QString steps;
    const Show* before = &from;
    for (const Cure& step : plan.steps) {
        steps += QStringLiteral("<li>%1</li>").arg(instruction(*before, step));
        before = &step.after;
    }
    return QStringLiteral("<ol style=\"margin:2px 0 2px -20px\">%1</ol>").arg(steps) + paragraph(plan.reason);
}

}  // namespace howlmap::app
