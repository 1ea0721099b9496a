// SPDX-License-Identifier: GPL-3.0-or-later
// What stands on the pages of a sheet, as others read them: text and boxes by pdftotext, lines by their pixels.
#pragma once
#include <QByteArray>
#include <QImage>
#include <QPair>
#include <QString>
#include <QStringList>

namespace howlmap::app::test {

/// What a program prints; empty where it fails.
QString run(const QString& program, const QStringList& arguments);
/// Text with single blanks for all white space.
QString without_breaks(QString text);
void write(const QByteArray& bytes, const QString& path);
/// Widths in pixels of the stage (between its side edges) and of the scale bar (between its outer ticks).
QPair<double, double> widths_on(const QImage& page);
/// Words as rectangles from pdftotext: inside the page, and no two of a page overlap by more than a hair.
void check_boxes(const QString& xml, int least_pages = 5);

}  // namespace howlmap::app::test
