// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/canvas/plan_clipboard.h"

#include <QGuiApplication>

#include "app/export/plan_export.h"
#include "core/file/read.h"
#include "core/file/write.h"
#include "core/show/placed.h"

namespace howlmap::app {

QString part_mime_type() { return QStringLiteral("application/vnd.howlmap.part+json"); }

std::unique_ptr<QMimeData> mime_of(const Show& part) {
    auto mime = std::make_unique<QMimeData>();
    mime->setData(part_mime_type(), QByteArray::fromStdString(write_show(part)));
    PlanDrawing drawing;
    drawing.font = QGuiApplication::font();
    mime->setData(QStringLiteral("image/svg+xml"), objects_svg(part, drawing));
    mime->setImageData(objects_image(part, drawing));
    QStringList names;
    for (const Placed& object : placed_objects(part)) names.append(QString::fromStdString(object.name));
    mime->setText(names.join(u'\n'));
    return mime;
}

std::optional<Show> part_in(const QMimeData& mime) {
    if (!mime.hasFormat(part_mime_type())) return std::nullopt;
    auto read = read_show(mime.data(part_mime_type()).toStdString());
    if (!read) return std::nullopt;
    return std::move(read->show);
}

}  // namespace howlmap::app
