import { Module } from '@nestjs/common';
import { StalenessDoor } from './staleness.door.js';
import { StalenessRepository } from './staleness.repository.js';

@Module({ providers: [StalenessDoor, StalenessRepository], exports: [StalenessDoor] })
export class StalenessModule {}
