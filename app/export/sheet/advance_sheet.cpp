// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/advance_sheet.h"

#include <QBuffer>
#include <QLocale>
#include <QPdfWriter>
#include <QPicture>
#include <QPrinter>

#include "app/export/sheet/sheet_parts.h"
#include "app/export/sheet/sheet_text.h"
#include "app/settings/figures.h"

namespace howlmap::app {
namespace {

constexpr double kPointsPerInch = 72.0;
constexpr int kSheetDpi = 1200;

int draw_pages(QPainter& painter, const Flow::Page& page, const SheetContent& content, const SheetOptions& options,
               const PlanBlock& plan, const std::function<void()>& next_page) {
    Flow flow(painter, page, next_page);
    draw_parts(flow, content, options, plan);
    return flow.page_number();
}

Flow::Page page_of(const Show& show, const SheetOptions& options, QSizeF size_pt) {
    Flow::Page page;
    page.size_pt = size_pt;
    page.header = listed_parts({title_of(show), qstr(show.date)});
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

/// As roomy as it goes without taking a page more than the closest would.
void choose_spacing(Flow::Page& page, const SheetContent& content, const SheetOptions& options, const PlanBlock& plan) {
    for (const Spacing& spacing : {Spacing{}, Spacing{1.4, 64.0, 7.0}, Spacing{0.9, 52.0, 5.0}}) {
        Flow::Page tried = page;
        tried.spacing = spacing;
        const int pages = count_pages(tried, content, options, plan);
        if (page.total != 0 && pages >= page.total) continue;
        page.spacing = spacing;
        page.total = pages;
    }
}

}  // namespace

QPageSize::PageSizeId paper_of_locale() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4;
}

int draw_sheet(QPainter& painter, QSizeF size_pt, const SheetContent& content, const SheetOptions& options,
               const PlanBlock& plan, const std::function<void()>& next_page) {
    Flow::Page page = page_of(content.show, options, size_pt);
    choose_spacing(page, content, options, plan);
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
