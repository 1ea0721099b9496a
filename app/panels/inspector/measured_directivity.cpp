// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/inspector/measured_directivity.h"

#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <utility>

#include "core/file/directivity_csv.h"
#include "core/show/find.h"

namespace howlmap::app {
namespace {

constexpr qint64 kMostCsvBytes = 8 << 20;

DirectivityTable* table_of(Show& show, const std::string& id) {
    if (Loudspeaker* speaker = find_by_id(show.loudspeakers, id))
        return std::get_if<DirectivityTable>(&speaker->directivity);
    Input* input = find_by_id(show.inputs, id);
    Microphone* microphone = input ? std::get_if<Microphone>(&input->transducer) : nullptr;
    return microphone ? std::get_if<DirectivityTable>(&microphone->pattern) : nullptr;
}

const DirectivityTable* table_of(const Show& show, const std::string& id) {
    return table_of(const_cast<Show&>(show), id);
}

}  // namespace

MeasuredDirectivity::MeasuredDirectivity(Document& document, QString id, QWidget* parent)
    : QWidget(parent), document_(document), id_(std::move(id)), summary_(new QLabel(this)), trouble_(new QLabel(this)) {
    summary_->setWordWrap(true);
    trouble_->setWordWrap(true);
    auto* buttons = new QHBoxLayout;
    const auto add = [&](const QString& text, const QString& tip, auto slot) {
        auto* button = new QPushButton(text, this);
        button->setToolTip(tip);
        button->setStatusTip(tip);
        connect(button, &QPushButton::clicked, this, slot);
        buttons->addWidget(button);
    };
    add(tr("Paste table"), tr("First line: angles; each further line: Hz, then dB at each angle"),
        [this] { take(QGuiApplication::clipboard()->text()); });
    add(tr("Load table…"), tr("From a CSV file"), [this] { load(); });
    add(tr("Copy table"), tr("As comma separated text"), [this] {
        if (const auto* table = table_of(std::as_const(document_).show(), id_.toStdString()))
            QGuiApplication::clipboard()->setText(QString::fromStdString(write_directivity_csv(*table)));
    });
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(summary_);
    layout->addLayout(buttons);
    layout->addWidget(trouble_);
    refresh();
}

void MeasuredDirectivity::refresh() {
    const auto* table = table_of(document_.show(), id_.toStdString());
    setVisible(table != nullptr);
    if (!table) return;
    summary_->setText(tr("%1 angles by %2 frequencies, the same all round the axis")
                          .arg(table->angles_deg.size())
                          .arg(table->hz.size()));
}

bool MeasuredDirectivity::take(const QString& text) {
    const auto read = read_directivity_csv(text.toStdString());
    trouble_->setText(read ? QString() : QString::fromStdString(read.error().message()));
    if (!read) return false;
    document_.edit(tr("Set measured directivity"), [&](Show& show) {
        DirectivityTable* table = table_of(show, id_.toStdString());
        if (!table) return;
        const Extras extras = table->extras;
        *table = *read;
        table->extras = extras;
    });
    return true;
}

void MeasuredDirectivity::load() {
    const QString name = QFileDialog::getOpenFileName(this, tr("Load a directivity"), {},
                                                      tr("Tables (*.csv *.txt *.tsv);;All files (*)"));
    if (name.isEmpty()) return;
    QFile file(name);
    if (file.size() > kMostCsvBytes || !file.open(QIODevice::ReadOnly))
        trouble_->setText(tr("%1 cannot be read").arg(name));
    else
        take(QString::fromUtf8(file.readAll()));
}

}  // namespace howlmap::app
