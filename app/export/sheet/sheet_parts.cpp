// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/sheet_parts.h"

#include <algorithm>

#include "app/export/sheet/mix_block.h"
#include "app/export/sheet/sheet_text.h"
#include "app/export/sheet/table_block.h"
#include "app/settings/figures.h"
#include "core/report/differences.h"
#include "core/report/lists.h"
#include "core/report/risks.h"

namespace howlmap::app {
namespace {

constexpr double kLeastPlanHeight = 200.0;
constexpr double kAboveCaption = 4.0;
constexpr double kMostNotesOnTop = 64.0;  ///< longer ones would push the plan from the first page
constexpr std::size_t kBandsListed = 8;   ///< beyond these a band is as unlikely as any other

bool notes_on_top(const Flow& flow, const Show& show) {
    return flow.text_height(qstr(show.notes), Type::body, flow.width()) <= kMostNotesOnTop;
}

/// Title, who plays where and when, and whom to call.
void draw_head(Flow& flow, const Show& show) {
    const QString title = title_of(show);
    flow.text(flow.take(flow.text_height(title, Type::title, flow.width())), title, Type::title);
    const QString where = listed_parts({qstr(show.act), qstr(show.venue), qstr(show.date)});
    if (!where.isEmpty()) flow.paragraph(where);
    const Contact& c = show.contact;
    const QString contact = listed_parts({qstr(c.name), qstr(c.phone), qstr(c.email)});
    if (!contact.isEmpty()) flow.paragraph(sheet_text("Contact: %1").arg(contact));
    if (!show.notes.empty() && notes_on_top(flow, show)) flow.paragraph(qstr(show.notes));
}

/// `below`: height of what should stay on the page of the plan, if that leaves the plan large enough.
void draw_plan(Flow& flow, const PlanBlock& plan, double below) {
    flow.need(kLeastPlanHeight);
    const double words =
        plan.caption.isEmpty() ? 0.0 : flow.text_height(plan.caption, Type::small, flow.width()) + 3.0 + kAboveCaption;
    const double all = flow.room_left() - words - 1.0;
    const double room = all - below >= kLeastPlanHeight ? all - below : all;
    plan.draw(flow.painter(), flow.take(std::min(room, plan.height({flow.width(), room}))));
    if (words == 0.0) return;
    flow.skip(kAboveCaption);
    flow.paragraph(plan.caption, Type::small);
}

/// Notes that were too long for the head, and those on players and gear.
void draw_notes(Flow& flow, const Show& show) {
    if (!show.notes.empty() && !notes_on_top(flow, show)) {
        flow.heading(sheet_text("About this show"));
        flow.paragraph(qstr(show.notes));
    }
    const report::Table notes = report::notes_list(show);
    draw_list(flow, qstr(notes.title), notes);
}

QString words_on_mixes() {
    return sheet_text(
        "Sends are levels at 1 m from the mix's loudspeaker in loud playing. Grey bars and numbers, also those in "
        "brackets: the bands of the ring-out list, in its order, in the mix through which they most likely ring.");
}

void draw_mixes(Flow& flow, const SheetContent& content) {
    const auto sheets = report::mix_sheets(content.show);
    if (sheets.empty()) return;
    const QString words = words_on_mixes();
    const auto risk = [&](const report::MixSheet& sheet) { return band_risk(content.ring_out(), sheet.mix->id); };
    flow.heading(sheet_text("Mixes and starting equalisers"),
                 16.0 + flow.text_height(words, Type::small, flow.width()) +
                     mix_height(flow, sheets.front(), risk(sheets.front())));
    flow.paragraph(words, Type::small);
    for (const report::MixSheet& sheet : sheets) draw_mix(flow, sheet, risk(sheet));
}

void draw_mix_pages(Flow& flow, const SheetContent& content, bool on_this_page) {
    for (const report::MixSheet& sheet : report::mix_sheets(content.show)) {
        if (!on_this_page) flow.break_page();
        on_this_page = false;
        std::vector<BandProbability> bands;
        for (const BandProbability& band : content.ring_out())
            if (band.mix == sheet.mix->id && bands.size() < kBandsListed) bands.push_back(band);
        draw_mix_page(flow, sheet, band_risk(content.ring_out(), sheet.mix->id),
                      report::ring_out_list(content.show, bands));
    }
    if (on_this_page) return;
    if (!content.ring_out().empty()) flow.break_page();  // what concerns all mixes stays off the last one's page
    flow.paragraph(words_on_mixes(), Type::small);
}

void draw_ring_out(Flow& flow, const SheetContent& content) {
    report::Table table = report::ring_out_list(content.show, content.ring_out());
    if (table.rows.empty()) return;
    if (table.rows.size() > kBandsListed) table.rows.resize(kBandsListed);
    const QString words = sheet_text(
        "How often a band is the first to ring if the stage is set up by hand after this plan, never quite alike, and "
        "the loop that most likely makes it.");
    flow.heading(sheet_text("Ring-out list, most likely first"),
                 flow.text_height(words, Type::small, flow.width()) + 60.0);
    flow.paragraph(words, Type::small);
    draw_table(flow, table);
}

/// On grey above the plan: who reads no further has read this.
void draw_risks(Flow& flow, const SheetContent& content) {
    QStringList sentences;
    for (const std::string& sentence : report::risk_sentences(content.show, content.result))
        sentences.append(qstr(sentence));
    const QString words = sheet_text("Risks: %1").arg(sentences.join(u' '));
    const double height = flow.text_height(words, Type::body, flow.width());
    flow.need(height);
    flow.painter().fillRect(QRectF(flow.left(), flow.y(), flow.width(), height), kShade);
    flow.paragraph(words);
}

void draw_sentences(Flow& flow, const QString& heading, const std::vector<std::string>& sentences) {
    double height = 0.0;  // a few sentences stay together
    for (const std::string& sentence : sentences)
        height += flow.text_height(qstr(sentence), Type::body, flow.width()) + 4.0;
    flow.heading(heading, height);
    for (const std::string& sentence : sentences) flow.paragraph(qstr(sentence));
}

void draw_changes(Flow& flow, const Show& show, const SheetOptions& options) {
    const report::Table table = report::differences_since(*options.since, show);
    const QString heading = sheet_text("Changed since %1").arg(options.since_name);
    if (!table.rows.empty()) return draw_list(flow, heading, table);
    flow.heading(heading);
    flow.paragraph(sheet_text("Nothing that matters for patching, placing or equalising."));
}

}  // namespace

QString title_of(const Show& show) { return show.title.empty() ? sheet_text("Untitled show") : qstr(show.title); }

QString listed_parts(const QStringList& parts) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(QStringLiteral("  ·  "));
}

void draw_parts(Flow& flow, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan) {
    const Show& show = content.show;
    draw_head(flow, show);
    if (options.risks) draw_risks(flow, content);
    const report::Table inputs = report::input_list(show);
    const bool together = options.inputs && !options.since;
    if (options.plan) draw_plan(flow, plan, together ? list_height(flow, inputs) : 0.0);
    if (options.since) draw_changes(flow, show, options);
    if (options.inputs) {
        draw_list(flow, qstr(inputs.title), inputs);
        draw_notes(flow, show);
    }
    if (options.mixes) {
        if (options.one_mix_a_page)
            draw_mix_pages(flow, content, !options.plan && !options.inputs && !options.since);
        else
            draw_mixes(flow, content);
        draw_ring_out(flow, content);
        const report::Table found = report::soundcheck_list(show);
        draw_list(flow, qstr(found.title), found);
    }
    if (options.risks) {
        auto cautions = report::caution_sentences();
        cautions.insert(cautions.begin() + 1, report::what_estimates_leave_out());
        draw_sentences(flow, sheet_text("Cautions"), cautions);
    }
}

}  // namespace howlmap::app
