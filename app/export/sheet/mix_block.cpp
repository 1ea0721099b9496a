// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/mix_block.h"

#include "app/export/sheet/sheet_text.h"
#include "app/export/sheet/table_block.h"
#include "app/settings/figures.h"
#include "core/report/words.h"

namespace howlmap::app {
namespace {

QString head_line(const report::MixSheet& sheet) {
    QString line = sheet_text("Mix %1  %2").arg(sheet.mix->number).arg(qstr(report::name_of(*sheet.mix)));
    if (!sheet.who.empty()) line += sheet_text("  -  for %1").arg(qstr(report::listed(sheet.who)));
    if (!sheet.outlets.empty()) line += sheet_text("  -  on %1").arg(qstr(report::listed(sheet.outlets)));
    return line;
}

/// "most: fiddle 98 dB (ch 2)   medium: voice 92 dB (ch 1)"
QString sends_line(const report::MixSheet& sheet) {
    QStringList groups;
    std::string amount;
    for (const report::SendLine& send : sheet.sends) {
        const QString entry = sheet_text("%1 %2 (ch %3)")
                                  .arg(qstr(send.input), qstr(report::level_words(send.level_db)))
                                  .arg(send.channel);
        if (send.amount != amount) {
            groups.append(QStringLiteral("%1: %2").arg(qstr(send.amount), entry));
            amount = send.amount;
        } else {
            groups.last() += QStringLiteral(", ") + entry;
        }
    }
    return groups.isEmpty() ? sheet_text("no sends") : groups.join(QStringLiteral(";  "));
}

QString settings_line(const report::MixSheet& sheet) {
    QStringList parts;
    for (const std::string& setting : sheet.settings) parts.append(qstr(setting));
    return parts.isEmpty() ? sheet_text("polarity normal, no high-pass, no notches") : parts.join(QStringLiteral("; "));
}

bool has_faders(const Mix& mix) { return !mix.loudspeakers.empty() || !mix.graphic_eq.empty(); }

}  // namespace

double mix_height(const Flow& flow, const report::MixSheet& sheet) {
    double height = (has_faders(*sheet.mix) ? flow.spacing().fader_height : 0.0) + flow.spacing().gap;
    for (const QString& line : {head_line(sheet), sends_line(sheet), settings_line(sheet)})
        height += flow.text_height(line, Type::body, flow.width()) + 3.0;
    return height;
}

void draw_mix(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk) {
    const QString head = head_line(sheet), sends = sends_line(sheet), settings = settings_line(sheet);
    flow.need(mix_height(flow, sheet));
    flow.painter().fillRect(
        QRectF(flow.left(), flow.y(), flow.width(), flow.text_height(head, Type::body, flow.width())),
        QColor(0xe6, 0xe6, 0xe6));
    flow.paragraph(head);
    flow.paragraph(sends);
    flow.paragraph(settings);
    if (has_faders(*sheet.mix)) draw_faders(flow, flow.take(flow.spacing().fader_height), *sheet.mix, risk);
    flow.skip(flow.spacing().gap);
}

namespace {
constexpr double kTallFaders = 190.0;
constexpr std::size_t kLinesToWrite = 5;
constexpr int kRoomToWrite = 30;  // letters: a figure by hand is wider than print

std::string in_words(const char* english) { return sheet_text(english).toStdString(); }

report::Table sends_table(const report::MixSheet& sheet) {
    report::Table table{{},
                        {in_words("Ch"), in_words("Input"), in_words("How much"), in_words("Level at 1 m"),
                         in_words("Set at the desk")},
                        {}};
    for (const report::SendLine& send : sheet.sends)
        table.rows.push_back(
            {std::to_string(send.channel), send.input, send.amount, report::level_words(send.level_db), {}});
    return table;
}

report::Table lines_to_write() {
    report::Table table{{}, {in_words("Heard, Hz"), in_words("Cut, dB"), in_words("Note")}, {}};
    const std::string room = QString(kRoomToWrite, QChar::Nbsp).toStdString();
    table.rows.assign(kLinesToWrite, {room + "\n\u00a0", room, {}});
    return table;
}
}  // namespace

void draw_mix_page(Flow& flow, const report::MixSheet& sheet, const BandRisk& risk, const report::Table& ring_out) {
    flow.heading(head_line(sheet));
    flow.paragraph(settings_line(sheet));
    flow.skip(4.0);
    if (sheet.sends.empty())
        flow.paragraph(sheet_text("no sends"));
    else
        draw_table(flow, sends_table(sheet));
    if (has_faders(*sheet.mix)) {
        flow.heading(sheet_text("Starting equaliser"), kTallFaders);
        draw_faders(flow, flow.take(kTallFaders), *sheet.mix, risk);
    }
    draw_list(flow, sheet_text("Most likely to ring through this mix"), ring_out);
    draw_list(flow, sheet_text("Found at the soundcheck"), lines_to_write());
}

}  // namespace howlmap::app
