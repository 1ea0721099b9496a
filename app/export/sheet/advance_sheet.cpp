// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/advance_sheet.h"

#include <QBuffer>
#include <QLocale>
#include <QPdfWriter>
#include <QPicture>
#include <QPrinter>

#include "app/export/sheet/mix_block.h"
#include "app/export/sheet/sheet_text.h"
#include "app/export/sheet/table_block.h"
#include "app/settings/figures.h"
#include "core/report/differences.h"
#include "core/report/lists.h"
#include "core/report/risks.h"

namespace howlmap::app {
namespace {

constexpr double kPointsPerInch = 72.0;
constexpr int kSheetDpi = 1200;
constexpr double kLeastPlanHeight = 200.0;
constexpr double kAboveCaption = 4.0;

QString joined(const QStringList& parts) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(QStringLiteral("  ·  "));
}

/// Title, who plays where and when, and whom to call.
void draw_head(Flow& flow, const Show& show) {
    const QString title = show.title.empty() ? sheet_text("Untitled show") : qstr(show.title);
    flow.text(flow.take(flow.text_height(title, Type::title, flow.width())), title, Type::title);
    flow.paragraph(joined({qstr(show.act), qstr(show.venue), qstr(show.date)}));
    const Contact& c = show.contact;
    const QString contact = joined({qstr(c.name), qstr(c.phone), qstr(c.email)});
    if (!contact.isEmpty()) flow.paragraph(sheet_text("Contact: %1").arg(contact));
    if (!show.notes.empty()) flow.paragraph(qstr(show.notes));
}

void draw_plan(Flow& flow, const PlanBlock& plan) {
    flow.need(kLeastPlanHeight);
    const double words =
        plan.caption.isEmpty() ? 0.0 : flow.text_height(plan.caption, Type::small, flow.width()) + 3.0 + kAboveCaption;
    const double room = flow.room_left() - words - 1.0;
    plan.draw(flow.painter(), flow.take(std::min(room, plan.height({flow.width(), room}))));
    if (words == 0.0) return;
    flow.skip(kAboveCaption);
    flow.paragraph(plan.caption, Type::small);
}

void draw_list(Flow& flow, const report::Table& table) {
    if (table.rows.empty()) return;
    // A list that fits a page is not torn apart: nobody patches from two sheets at once.
    constexpr double kHeading = 30.0;
    const double whole = table_height(flow, table);
    if (whole + kHeading <= flow.body_height()) flow.need(whole + kHeading);
    flow.heading(qstr(table.title));
    draw_table(flow, table);
}

void draw_mixes(Flow& flow, const SheetContent& content, const SheetOptions& options) {
    const auto sheets = report::mix_sheets(content.show);
    if (sheets.empty()) return;
    const BandRisk risk = content.result.tolerance ? band_risk(*content.result.tolerance) : BandRisk{};
    const QString words = sheet_text(
        "Sends are levels at 1 m from the mix's loudspeaker in loud playing. Grey bars and numbers: bands in the "
        "order in which they are likely to ring first on this stage.");
    flow.heading(sheet_text("Monitor mixes and starting equalisers"),
                 16.0 + flow.text_height(words, Type::small, flow.width()) + mix_height(flow, sheets.front()));
    flow.paragraph(words, Type::small);
    bool first = true;
    for (const report::MixSheet& sheet : sheets) {
        if (options.one_mix_a_page && !first) flow.break_page();
        draw_mix(flow, sheet, risk);
        first = false;
    }
}

void draw_ring_out(Flow& flow, const SheetContent& content) {
    if (!content.result.tolerance || content.result.tolerance->first_ring.empty()) return;
    report::Table table = report::ring_out_list(content.show, *content.result.tolerance, content.result.rings);
    constexpr std::size_t kMost = 8;  // beyond these a band is as unlikely as any other
    if (table.rows.size() > kMost) table.rows.resize(kMost);
    flow.heading(sheet_text("Ring-out list, most likely first"));
    draw_table(flow, table);
}

void draw_sentences(Flow& flow, const QString& heading, const std::vector<std::string>& sentences) {
    double height = 0.0;  // a few sentences stay together
    for (const std::string& sentence : sentences)
        height += flow.text_height(qstr(sentence), Type::body, flow.width()) + 4.0;
    flow.heading(heading, height);
    for (const std::string& sentence : sentences) flow.paragraph(qstr(sentence));
}

void draw_soundcheck(Flow& flow, const Show& show) {
    if (show.soundcheck.empty()) return;
    report::Table table{{}, {}, {}};
    table.columns = {sheet_text("Hz").toStdString(),  sheet_text("Band").toStdString(),
                     sheet_text("Mix").toStdString(), sheet_text("Done").toStdString(),
                     sheet_text("dB").toStdString(),  sheet_text("Note").toStdString()};
    for (const SoundcheckEntry& e : show.soundcheck)
        table.rows.push_back({QString::number(e.hz, 'f', 0).toStdString(), QString::number(e.band).toStdString(), e.mix,
                              e.action, QString::number(e.gain_db).toStdString(), e.note});
    flow.heading(sheet_text("Found at the soundcheck"));
    draw_table(flow, table);
}

void draw_changes(Flow& flow, const Show& show, const SheetOptions& options) {
    const report::Table table = report::differences_since(*options.since, show);
    flow.heading(sheet_text("Changed since %1").arg(options.since_name));
    if (table.rows.empty())
        flow.paragraph(sheet_text("Nothing that matters for patching, placing or equalising."));
    else
        draw_table(flow, table);
}

void draw_all(Flow& flow, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan) {
    draw_head(flow, content.show);
    if (options.plan) draw_plan(flow, plan);
    if (options.since) draw_changes(flow, content.show, options);
    if (options.inputs) {
        draw_list(flow, report::input_list(content.show));
        draw_list(flow, report::notes_list(content.show));
    }
    if (options.mixes) {
        draw_mixes(flow, content, options);
        draw_ring_out(flow, content);
        draw_soundcheck(flow, content.show);
    }
    if (options.risks) {
        draw_sentences(flow, sheet_text("Risks on this stage"), report::risk_sentences(content.show, content.result));
        draw_sentences(flow, sheet_text("Cautions"), report::caution_sentences());
    }
}

int draw_pages(QPainter& painter, const Flow::Page& page, const SheetContent& content, const SheetOptions& options,
               const PlanBlock& plan, const std::function<void()>& next_page) {
    Flow flow(painter, page, next_page);
    draw_all(flow, content, options, plan);
    return flow.page_number();
}

Flow::Page page_of(const Show& show, const SheetOptions& options, QSizeF size_pt) {
    Flow::Page page;
    page.size_pt = size_pt;
    page.header = joined({show.title.empty() ? sheet_text("Untitled show") : qstr(show.title), qstr(show.date)});
    page.version = sheet_text("version of %1").arg(options.made.toString(Qt::ISODate));
    return page;
}

/// Laid out once on nothing, only to know how many pages there will be.
int count_pages(const Flow::Page& page, const SheetContent& content, const SheetOptions& options,
                const PlanBlock& plan) {
    QPicture nothing;
    QPainter painter(&nothing);
    return draw_pages(painter, page, content, options, {plan.height, [](QPainter&, const QRectF&) {}, plan.caption},
                      [] {});
}

}  // namespace

QPageSize::PageSizeId paper_of_locale() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4;
}

int draw_sheet(QPainter& painter, QSizeF size_pt, const SheetContent& content, const SheetOptions& options,
               const PlanBlock& plan, const std::function<void()>& next_page) {
    Flow::Page page = page_of(content.show, options, size_pt);
    page.total = count_pages(page, content, options, plan);
    return draw_pages(painter, page, content, options, plan, next_page);
}

QByteArray sheet_pdf(const SheetContent& content, const SheetOptions& options, const PlanBlock& plan) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kSheetDpi);
    writer.setPageSize(QPageSize(options.paper));
    writer.setPageMargins({});
    writer.setTitle(qstr(content.show.title));
    writer.setCreator(QStringLiteral("Howlmap"));
    QPainter painter(&writer);
    const double scale = kSheetDpi / kPointsPerInch;
    painter.scale(scale, scale);
    draw_sheet(painter, QPageSize(options.paper).size(QPageSize::Point), content, options, plan,
               [&] { writer.newPage(); });
    painter.end();
    return bytes;
}

void print_sheet(QPrinter& printer, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan) {
    printer.setFullPage(true);
    QPainter painter(&printer);
    const double scale = printer.resolution() / kPointsPerInch;
    painter.scale(scale, scale);
    draw_sheet(painter, printer.pageLayout().fullRect(QPageLayout::Point).size(), content, options, plan,
               [&] { printer.newPage(); });
}

}  // namespace howlmap::app
