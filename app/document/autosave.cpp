// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/document/autosave.h"

#include <QDir>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <QUuid>

#include "app/document/file_names.h"
#include "core/file/write.h"

namespace howlmap::app {
namespace {

QString new_file() {
    const QString folder = Autosave::folder();
    QDir().mkpath(folder);
    return folder + u'/' + QUuid::createUuid().toString(QUuid::WithoutBraces) + QStringLiteral(".autosave");
}

QByteArray envelope(const Show& show, const QString& path) {
    return QJsonDocument(
               QJsonObject{{QStringLiteral("format"), QStringLiteral("howlmap-autosave")},
                           {QStringLiteral("path"), path},
                           {QStringLiteral("title"), QString::fromStdString(show.title)},
                           {QStringLiteral("time"), QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs)},
                           {QStringLiteral("show"), QString::fromStdString(write_show(show))}})
        .toJson();
}

}  // namespace

QString Autosave::folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/autosave");
}

Autosave::Autosave(Document& document, int rest_ms, int at_most_ms, QObject* parent)
    : QObject(parent),
      document_(document),
      at_most_ms_(at_most_ms),
      file_(new_file()),
      lock_(file_ + QStringLiteral(".lock")) {
    lock_.setStaleLockTime(0);
    lock_.tryLock(0);
    rest_.setSingleShot(true);
    rest_.setInterval(rest_ms);
    connect(&rest_, &QTimer::timeout, this, &Autosave::write);
    connect(&document_, &Document::changed, this, &Autosave::edited);
    connect(&document_, &Document::modified_changed, this, [this](bool modified) { modified ? edited() : discard(); });
    connect(&document_, &Document::replaced, this, &Autosave::discard);
}

Autosave::~Autosave() { discard(); }

void Autosave::edited() {
    if (!first_edit_.isValid()) first_edit_.start();
    if (!rest_.isActive() || first_edit_.elapsed() < at_most_ms_) rest_.start();
}

void Autosave::write() {
    first_edit_.invalidate();
    if (!document_.modified() && !document_.in_gesture()) return;
    worker_.run(
        [this, show = document_.show(), path = document_.path(), file = file_](const Job& job) -> Worker::Deliver {
            if (job.cancelled()) return {};
            const auto saved = save_atomically(to_path(file), envelope(show, path).toStdString());
            if (saved) return {};
            return [this, reason = QString::fromStdString(saved.error())] { Q_EMIT failed(reason); };
        });
}

void Autosave::write_now() {
    rest_.stop();
    worker_.cancel();
    worker_.wait();
    if (!document_.modified()) return;
    const auto saved = save_atomically(to_path(file_), envelope(document_.show(), document_.path()).toStdString());
    if (!saved) Q_EMIT failed(QString::fromStdString(saved.error()));
}

void Autosave::discard() {
    rest_.stop();
    first_edit_.invalidate();
    worker_.cancel();
    worker_.wait();
    QFile::remove(file_);
}

}  // namespace howlmap::app
